using System.Collections.Immutable;

namespace DxAssistant.Knowledge.Content.Syntax;

/// <summary>A heading and what stands under it up to the next heading.</summary>
internal sealed record Section(
    RichText Heading,
    int Level,
    ImmutableArray<RichText> Paragraphs,
    ImmutableArray<RichText> Items,
    ImmutableArray<PipeTable> Tables)
{
    /// <summary>The pictures that stand in a paragraph of their own.</summary>
    public ImmutableArray<PageLink> Pictures { get; init; } = [];

    /// <summary>
    /// The page the texts come from when it is not the one they stand on: a page of another language.
    /// </summary>
    public string? Path { get; init; }

    public string Name => Heading.Text;

    public PipeTable? Table => Tables.IsEmpty ? null : Tables[0];

    public bool IsEmpty => Paragraphs.IsEmpty && Items.IsEmpty && Tables.IsEmpty;

    /// <summary>Every text under the heading, in no promised order.</summary>
    public IEnumerable<RichText> Texts => Paragraphs.Concat(Items)
        .Concat(Tables.SelectMany(table => table.Rows).SelectMany(row => row.Cells));
}
