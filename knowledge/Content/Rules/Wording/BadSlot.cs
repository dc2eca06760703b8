using DxAssistant.Knowledge.Content.Constructs;
using DxAssistant.Knowledge.Content.Syntax;

namespace DxAssistant.Knowledge.Content.Rules.Wording;

/// <summary>A phrase with an unpaired brace or a slot whose name is not an id.</summary>
/// <example>Bad: <c>Hello {name, tell me.</c>. Good: <c>Hello {name}, tell me.</c>.</example>
internal sealed class BadSlot : IContentRule
{
    public string Name => "bad-slot";

    public string Meaning => "A phrase with an unpaired brace or a slot whose name is not an id.";

    public RuleExample Bad { get; } = new("phrases.md", """
        ## greeting
        Hello ⟦{⟧name, tell me.
        """);

    public RuleExample Good { get; } = new("phrases.md", """
        ## greeting
        Hello {name}, tell me.
        """);

    public IEnumerable<Diagnostic> Check(Pages pages) =>
        from page in pages.OfKind(PageKind.Phrases)
        from section in page.Sections
        from paragraph in section.Paragraphs
        let at = Unpaired(page.Source, paragraph.Span)
        where at is not null
        select page.Error(Name, at.Value, "a slot must be `{name}`", "a name is an id: " + Id.Help);

    // The first brace that does not belong to a well-written slot.
    private static TextSpan? Unpaired(SourceText source, TextSpan span)
    {
        int at = span.Start;
        while (at < span.End)
        {
            int brace = source.Text.AsSpan(at, span.End - at).IndexOfAny('{', '}');
            if (brace < 0)
            {
                return null;
            }

            at += brace;
            int end = source.Text.IndexOf('}', at, span.End - at);
            if (source.Text[at] == '}' || end < 0 || !Id.IsId(source.Text[(at + 1)..end]))
            {
                return new TextSpan(at, 1);
            }

            at = end + 1;
        }

        return null;
    }
}
