using System.Collections.Immutable;
using Markdig.Extensions.Tables;
using Markdig.Extensions.Yaml;
using Markdig.Syntax;

namespace DxAssistant.Knowledge.Content.Syntax;

/// <summary>Gathers what stands under one heading.</summary>
internal sealed class SectionReader(SourceText source)
{
    private readonly ImmutableArray<RichText>.Builder paragraphs = ImmutableArray.CreateBuilder<RichText>();
    private readonly ImmutableArray<RichText>.Builder items = ImmutableArray.CreateBuilder<RichText>();
    private readonly ImmutableArray<PipeTable>.Builder tables = ImmutableArray.CreateBuilder<PipeTable>();
    private readonly ImmutableArray<PageLink>.Builder pictures = ImmutableArray.CreateBuilder<PageLink>();

    private readonly List<TextSpan> unread = [];

    public RichText? Heading { get; init; }

    public int Level { get; init; }

    public void Read(Block block)
    {
        switch (block)
        {
            case YamlFrontMatterBlock or HtmlBlock or LinkReferenceDefinitionGroup:
                break;
            case Table table:
                tables.Add(TableReader.Read(source, table, unread));
                break;
            case ListBlock list:
                items.AddRange(list.OfType<ListItemBlock>().Select(ReadItem));
                break;
            case CodeBlock:
                unread.Add(InlineReader.SpanOf(block));
                break;
            case LeafBlock leaf:
                Add(paragraphs, leaf);
                break;
            case ContainerBlock container:
                foreach (Block inner in container)
                {
                    Read(inner);
                }

                break;
        }
    }

    /// <summary>What the section does not take in; everything, when there was no heading yet.</summary>
    public IEnumerable<TextSpan> Unread => Heading is not null
        ? unread
        : unread.Concat(paragraphs.Concat(items).Select(text => text.Span)).Concat(tables.Select(table => table.Span));

    /// <summary>The section, or null when nothing was read since the start of the page.</summary>
    public Section? Close() =>
        Heading is null ? null : new Section(Heading, Level, paragraphs.ToImmutable(), items.ToImmutable(),
            tables.ToImmutable())
        {
            Pictures = pictures.ToImmutable(),
        };

    // An item is one sentence or more, all of it running text; its paragraphs are joined.
    private RichText ReadItem(ListItemBlock item)
    {
        RichText[] parts = [.. item.Descendants<LeafBlock>()
            .Select(leaf => InlineReader.Read(source, leaf.Inline, InlineReader.SpanOf(leaf)))];
        return parts.Length == 0
            ? new RichText("", InlineReader.SpanOf(item), [])
            : new RichText(
                string.Join(' ', parts.Select(part => part.Text)),
                TextSpan.Between(parts[0].Span.Start, parts[^1].Span.End),
                [.. parts.SelectMany(part => part.Links)]);
    }

    private void Add(ImmutableArray<RichText>.Builder list, LeafBlock leaf)
    {
        RichText text = InlineReader.Read(source, leaf.Inline, InlineReader.SpanOf(leaf));
        if (!text.IsEmpty)
        {
            list.Add(text);
        }
        else
        {
            pictures.AddRange(text.Pictures);
        }
    }
}
