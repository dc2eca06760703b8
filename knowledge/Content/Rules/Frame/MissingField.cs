using DxAssistant.Knowledge.Content.Shapes;
using DxAssistant.Knowledge.Content.Syntax;

namespace DxAssistant.Knowledge.Content.Rules.Frame;

/// <summary>A field that the front matter of the kind must have.</summary>
/// <example>Bad: <c>a check without minutes</c>. Good: <c>minutes: 3</c>.</example>
internal sealed class MissingField : IContentRule
{
    public string Name => "missing-field";

    public string Meaning => "A field that the front matter of the kind must have.";

    public RuleExample Bad { get; } = new("checks/fan-plug.md", """
        ---
        kind: check
        id: fan-plug
        access: [isolated-open]
        who: technician
        ⟦---⟧
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
            if (page is not { Kind: { } kind, Front: { Problem: null } front })
            {
                continue;
            }

            foreach (FieldShape field in PageShapes.Of(kind).Fields.Where(field => field.Required))
            {
                if (front.Field(field.Name) is not { Values.IsEmpty: false }
                    && !IsMisspelt(front, PageShapes.Of(kind), field.Name))
                {
                    yield return page.Error(Name, front.Field(field.Name)?.NameSpan ?? front.End,
                        $"the front matter has no `{field.Name}`");
                }
            }
        }
    }

    // UnknownField reports the misspelt name and says how to write it.
    private static bool IsMisspelt(FrontMatter front, PageShape kind, string name) => front.Fields.Any(field =>
        kind.Field(field.Name) is null
            && NearestWord.Find(field.Name, kind.Fields.Select(shape => shape.Name)) == name);
}
