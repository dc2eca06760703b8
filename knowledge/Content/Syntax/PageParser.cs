using DxAssistant.Knowledge.Content.Shapes;
using System.Collections.Immutable;
using Markdig;
using Markdig.Extensions.Tables;
using Markdig.Extensions.Yaml;
using Markdig.Syntax;
using Markdig.Syntax.Inlines;

namespace DxAssistant.Knowledge.Content.Syntax;

/// <summary>Reads one page.</summary>
internal sealed class PageParser
{
    /// <summary>The longest page, in characters. Longer ones cannot be read by people either.</summary>
    public const int LongestPage = 100_000;

    private static readonly MarkdownPipeline Pipeline = new MarkdownPipelineBuilder()
        .UsePreciseSourceLocation().UsePipeTables().UseYamlFrontMatter().Build();

    private readonly SourceText source;
    private readonly List<Section> sections = [];
    private readonly List<TextSpan> unread = [];
    private SectionReader open;

    private PageParser(SourceText source)
    {
        this.source = source;
        open = new SectionReader(source);
    }

    /// <summary>Reads a page; what cannot be read is left out, never thrown.</summary>
    public static Page Parse(ContentFile file)
    {
        var source = new SourceText(file.Path, file.Text);
        if (file.Text.Length > LongestPage)
        {
            return new Page { Source = source, Unparsed = $"the page is longer than {LongestPage} characters" };
        }

        try
        {
            return new PageParser(source).Read(Markdown.Parse(file.Text, Pipeline));
        }
        catch (ArgumentException)
        {
            // Markdig refuses nesting beyond its limit with this exception and offers no other way to ask.
            return new Page { Source = source, Unparsed = "the page is nested too deeply to be read" };
        }
    }

    private Page Read(MarkdownDocument document)
    {
        FrontMatter? front = document.Count > 0 && document[0] is YamlFrontMatterBlock block ? ReadFront(block) : null;
        foreach (Block part in document)
        {
            ReadBlock(part);
        }

        Close();
        bool hasTitle = sections.Count > 0 && sections[0].Level == 1;
        Section? title = hasTitle ? sections[0] : null;
        ImmutableArray<Section> written = [.. sections.Skip(hasTitle ? 1 : 0)];
        ILookup<bool, PageLink> links = document.Descendants<LinkInline>()
            .ToLookup(link => link.IsImage, InlineReader.LinkOf);
        return new Page
        {
            Source = source,
            Front = front,
            Kind = KindOf(front),
            Title = title,
            Summary = title?.Paragraphs.FirstOrDefault(),
            Sections = [.. written.GroupBy(section => section.Name).Select(Joined)],
            WrittenSections = written,
            Links = [.. links[false]],
            Pictures = [.. links[true]],
            Unread = [.. unread],
            Html = [.. document.Descendants().Where(node => node is HtmlBlock or HtmlInline)
                .Select(InlineReader.SpanOf)],
        };
    }

    private FrontMatter ReadFront(YamlFrontMatterBlock block)
    {
        int start = source.Text.IndexOf('\n', block.Span.Start) + 1;
        int end = source.Text.LastIndexOf('\n', Math.Min(block.Span.End, source.Text.Length - 1));
        return FrontMatterParser.Parse(source, TextSpan.Between(start, end < start ? start : end + 1));
    }

    private void ReadBlock(Block block)
    {
        if (block is HeadingBlock heading)
        {
            Close();
            RichText text = InlineReader.Read(source, heading.Inline, WordsOf(heading));
            open = new SectionReader(source) { Heading = text, Level = heading.Level };
            return;
        }

        open.Read(block);
    }

    private static Section Joined(IEnumerable<Section> same) => same.Aggregate((first, next) => first with
    {
        Paragraphs = first.Paragraphs.AddRange(next.Paragraphs),
        Items = first.Items.AddRange(next.Items),
        Tables = first.Tables.AddRange(next.Tables),
        Pictures = first.Pictures.AddRange(next.Pictures),
    });

    // The words without the number signs; the signs when there are no words.
    private static TextSpan WordsOf(HeadingBlock heading) =>
        heading.Inline is { FirstChild: { } first, LastChild: { } last }
        ? TextSpan.Between(first.Span.Start, last.Span.End + 1)
        : InlineReader.SpanOf(heading);

    private void Close()
    {
        unread.AddRange(open.Unread);
        if (open.Close() is { } section)
        {
            sections.Add(section);
        }
    }

    private static PageKind? KindOf(FrontMatter? front) =>
        front?.Field("kind")?.Text is { } word ? PageShapes.KindNamed(word) : null;
}
