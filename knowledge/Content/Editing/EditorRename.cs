using System.Collections.Immutable;

namespace DxAssistant.Knowledge.Content.Editing;

/// <summary>Another id for a page, wherever it is named.</summary>
/// <param name="Files">Files that get another name.</param>
/// <param name="Edits">Stretches that get another text, each on the file as it is named before.</param>
public sealed record EditorRename(
    ImmutableArray<(string From, string To)> Files, ImmutableArray<(EditorPlace Place, string Text)> Edits);
