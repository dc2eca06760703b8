namespace DxAssistant.Knowledge.Content;

/// <summary>One page or picture as it stands in the content folder.</summary>
/// <param name="Path">Path inside the folder, with <c>/</c>, for example <c>faults/stuck-valve.md</c> or
/// <c>pictures/valve.svg</c>.</param>
/// <param name="Text">The text as read; line ends and a byte order mark do not matter.</param>
public sealed record ContentFile(string Path, string Text)
{
    /// <summary>True for a picture (<c>.svg</c>), false for a page.</summary>
    public bool IsPicture => Path.EndsWith(".svg", StringComparison.Ordinal);
}
