namespace DxAssistant.Server.Workbench.Writing;

/// <summary>A page of a proposal.</summary>
/// <param name="Before">The page it began from; null for a new page.</param>
/// <param name="After">Null for a page that is taken out.</param>
internal sealed record ProposedPage(string Path, string? Before, string? After);
