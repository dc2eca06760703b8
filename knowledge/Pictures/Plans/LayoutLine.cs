namespace DxAssistant.Knowledge.Pictures.Plans;

/// <summary>A line between two boxes, by their ids.</summary>
public sealed record LayoutLine(string From, string To);
