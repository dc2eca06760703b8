namespace DxAssistant.Server.Workbench.Writing;

/// <summary>A page as somebody is writing it.</summary>
/// <param name="Base">The mark of the page it began from; empty for a new page.</param>
internal sealed record PageInHand(string Path, string Text, string? Base = null);
