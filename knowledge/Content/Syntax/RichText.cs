using System.Collections.Immutable;

namespace DxAssistant.Knowledge.Content.Syntax;

/// <summary>A paragraph, list item, heading or table cell: its words without markup, its links and
/// pictures.</summary>
internal sealed record RichText(string Text, TextSpan Span, ImmutableArray<PageLink> Links)
{
    /// <summary>The pictures in it; their own words are none of the text's.</summary>
    public ImmutableArray<PageLink> Pictures { get; init; } = [];

    public bool IsEmpty => Text.Length == 0;

    /// <summary>The first link, or null.</summary>
    public PageLink? Link => Links.IsEmpty ? null : Links[0];
}
