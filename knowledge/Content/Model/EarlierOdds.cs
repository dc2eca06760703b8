namespace DxAssistant.Knowledge.Content.Model;

/// <summary>How the odds of faults change when a repair was made on the same unit not long ago.</summary>
/// <param name="Within">Days since the repair, 1 or more, end included.</param>
/// <param name="SamePart">Times the odds of what the repair cures: its part is new.</param>
/// <param name="LeftByWork">Times the odds of what such work may leave behind.</param>
/// <param name="Place">Where that is stated.</param>
public sealed record EarlierOdds(int Within, double SamePart, double LeftByWork, PagePlace Place);
