using DxAssistant.Knowledge.Content.Constructs;
using DxAssistant.Knowledge.Content.Syntax;

namespace DxAssistant.Knowledge.Content.Rules.Wording;

/// <summary>A phrase that is more than one paragraph, or whose name is not an id.</summary>
/// <example>Bad: <c>two paragraphs under a phrase</c>. Good: <c>one paragraph</c>.</example>
internal sealed class LongPhrase : IContentRule
{
    public string Name => "long-phrase";

    public string Meaning => "A phrase that is more than one paragraph, or whose name is not an id.";

    public RuleExample Bad { get; } = new("phrases.md", """
        ## greeting
        Hello.

        ⟦Tell me.⟧
        """);

    public RuleExample Good { get; } = new("phrases.md", """
        ## greeting
        Hello. Tell me.
        """);

    public IEnumerable<Diagnostic> Check(Pages pages)
    {
        foreach (Page page in pages.OfKind(PageKind.Phrases))
        {
            foreach (Section phrase in page.Sections.Where(section => section.Level == 2))
            {
                if (!Id.IsId(phrase.Name))
                {
                    yield return page.Error(Name, phrase.Heading.Span, $"`{phrase.Name}` is not an id", Id.Help);
                }
                else if (phrase.Paragraphs.Length > 1)
                {
                    yield return page.Error(Name, phrase.Paragraphs[1].Span,
                        $"the phrase `{phrase.Name}` has more than one paragraph");
                }
                else if (!phrase.Items.IsEmpty || !phrase.Tables.IsEmpty)
                {
                    yield return page.Error(Name, phrase.Heading.Span,
                        $"the phrase `{phrase.Name}` is more than a paragraph");
                }
            }
        }
    }
}
