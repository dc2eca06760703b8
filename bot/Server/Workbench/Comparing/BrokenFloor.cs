namespace DxAssistant.Server.Workbench.Comparing;

/// <summary>Something that an edit makes worse than was asked for.</summary>
/// <param name="What">In words.</param>
/// <param name="MayBeChance">Whether walks played on both sides may differ so much without the edit.</param>
internal sealed record BrokenFloor(string What, bool MayBeChance = false);
