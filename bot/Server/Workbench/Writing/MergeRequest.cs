namespace DxAssistant.Server.Workbench.Writing;

/// <summary>A page and what two people made of it.</summary>
internal sealed record MergeRequest(string? Before, string? Mine, string? Theirs);
