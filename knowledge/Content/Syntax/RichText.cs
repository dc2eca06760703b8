using System.Collections.Immutable;

namespace DxAssistant.Knowledge.Content.Syntax;

/// <summary>A paragraph, list item, heading or table cell: its words without markup, and its links.</summary>
internal sealed record RichText(string Text, TextSpan Span, ImmutableArray<PageLink> Links)
{
    public bool IsEmpty => Text.Length == 0;

    /// <summary>The first link, or null.</summary>
    public PageLink? Link => Links.IsEmpty ? null : Links[0];
}
