namespace DxAssistant.Server.Workbench.Writing;

/// <summary>Two texts of a page.</summary>
internal sealed record ChangesRequest(string? Before, string? After);
