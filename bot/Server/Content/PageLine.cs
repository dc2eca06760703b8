namespace DxAssistant.Server.Content;

/// <summary>One page in the list of pages.</summary>
internal sealed record PageLine(string Path, string Title);
