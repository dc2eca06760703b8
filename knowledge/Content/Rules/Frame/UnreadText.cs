using System.Collections.Immutable;
using DxAssistant.Knowledge.Content.Shapes;
using DxAssistant.Knowledge.Content.Syntax;

namespace DxAssistant.Knowledge.Content.Rules.Frame;

/// <summary>Text in a place where nothing reads it, so that nobody would ever see it.</summary>
/// <example>Bad: <c>a list under ## Ask</c>. Good: <c>one question under ## Ask</c>.</example>
internal sealed class UnreadText : IContentRule
{
    public string Name => "unread-text";

    public string Meaning => "Text in a place where nothing reads it, so that nobody would ever see it.";

    public bool NeedsFrame => true;

    public RuleExample Bad { get; } = new("checks/fan-plug.md", """
        ## Ask
        Is the plug home?

        - ⟦Look upper right.⟧
        """);

    public RuleExample Good { get; } = new("checks/fan-plug.md", """
        ## Ask
        Is the plug home, upper right?
        """);

    public IEnumerable<Diagnostic> Check(Pages pages)
    {
        foreach (Page page in pages.All.Where(page => page is { Kind: not null, Title: not null }))
        {
            PageShape kind = PageShapes.Of(page.Kind!.Value);
            IEnumerable<TextSpan> spans = page.Sections
                .SelectMany(section => kind.Section(section.Name) is { } shape ? Unread(shape, section) : [])
                .Concat(page.Unread);
            foreach (TextSpan span in spans)
            {
                yield return page.Error(Name, span, "nothing reads this text",
                    "put it where the kind of page has a place for it, or take it out");
            }
        }
    }

    // A section that lacks what it must have is WrongContent's; what it has instead is not blamed again.
    private static IEnumerable<TextSpan> Unread(SectionShape shape, Section section) => shape.Content switch
    {
        SectionContent.Table when section.Table is not null =>
            Spans(section.Paragraphs, section.Items).Concat(section.Tables.Skip(1).Select(table => table.Head.Span)),
        SectionContent.List when !section.Items.IsEmpty => section.Tables.Select(table => table.Head.Span),
        SectionContent.List or SectionContent.Free when !section.Items.IsEmpty && shape.LinksTo is not null =>
            Spans(section.Paragraphs).Concat(section.Tables.Select(table => table.Head.Span)),
        SectionContent.Sentence or SectionContent.Free when !section.Paragraphs.IsEmpty =>
            Spans(section.Items).Concat(section.Tables.Select(table => table.Head.Span)),
        SectionContent.Any when section.Texts.Any() && shape.Heading.Length > 0 =>
            section.Tables.Select(table => table.Head.Span),
        _ => [],
    };

    private static IEnumerable<TextSpan> Spans(params ImmutableArray<RichText>[] texts) =>
        texts.SelectMany(many => many).Select(text => text.Span);
}
