using DxAssistant.Knowledge.Content.Shapes;
using DxAssistant.Knowledge.Content.Syntax;

namespace DxAssistant.Knowledge.Content.Rules.Frame;

/// <summary>A front matter without a kind, or with one that does not exist.</summary>
/// <example>Bad: <c>kind: chekc</c>. Good: <c>kind: check</c>.</example>
internal sealed class UnknownKind : IContentRule
{
    public string Name => "unknown-kind";

    public string Meaning => "A front matter without a kind, or with one that does not exist.";

    public bool IsAboutFrame => true;

    public RuleExample Bad { get; } = new("checks/fan-plug.md", """
        ---
        kind: ⟦chekc⟧
        id: fan-plug
        ---
        """);

    public RuleExample Good { get; } = new("checks/fan-plug.md", """
        ---
        kind: check
        id: fan-plug
        minutes: 3
        access: [isolated-open]
        who: technician
        ---
        """);

    public IEnumerable<Diagnostic> Check(Pages pages)
    {
        foreach (Page page in pages.All)
        {
            if (page.Kind is not null || page.Front is not { Problem: null } front)
            {
                continue;
            }

            FrontMatterField? kind = front.Field("kind");
            yield return kind?.Text is { } word
                ? page.Error(Name, kind.Span, $"`{word}` is not a kind of page",
                    NearestWord.HintOrList(word, PageShapes.KindWords))
                : page.Error(Name, kind?.Span ?? default, "the page does not say its kind",
                    "write `kind: …` in the front matter");
        }
    }
}
