using DxAssistant.Knowledge.Content.Shapes;
using DxAssistant.Knowledge.Content.Syntax;

namespace DxAssistant.Knowledge.Content.Rules.Frame;

/// <summary>A field that the kind of page does not have.</summary>
/// <example>Bad: <c>minuets: 3</c>. Good: <c>minutes: 3</c>.</example>
internal sealed class UnknownField : IContentRule
{
    public string Name => "unknown-field";

    public string Meaning => "A field that the kind of page does not have.";

    public bool IsAboutFrame => true;

    public RuleExample Bad { get; } = new("checks/fan-plug.md", """
        ---
        kind: check
        id: fan-plug
        ⟦minuets⟧: 3
        access: [isolated-open]
        who: technician
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
        foreach (Page page in pages.All.Where(page => page.Kind is not null))
        {
            PageShape kind = PageShapes.Of(page.Kind!.Value);
            foreach (FrontMatterField field in page.Front!.Fields.Where(field => kind.Field(field.Name) is null))
            {
                yield return page.Error(Name, field.NameSpan, $"a {kind.Word} page has no field `{field.Name}`",
                    NearestWord.HintOrList(field.Name, kind.Fields.Select(shape => shape.Name)));
            }
        }
    }
}
