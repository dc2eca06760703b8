using System.Collections.Immutable;
using DxAssistant.Knowledge.Content.Syntax;

namespace DxAssistant.Knowledge.Content.Rules.Diagnosis;

/// <summary>
/// None, or more than one, of the access states is where a job begins, or where a repair is verified.
/// </summary>
/// <example>Bad: <c>start: true in two access states</c>. Good: <c>start: true in one</c>.</example>
internal sealed class NotOneMarkedState : IContentRule
{
    private static readonly (string Field, string What)[] Marks =
        [("start", "where a job begins"), ("verify", "where a repair is verified")];

    public string Name => "not-one-marked-state";

    public string Meaning =>
        "None, or more than one, of the access states is where a job begins, or where a repair is verified.";

    public bool LooksAtAll => true;

    public RuleExample Bad { get; } = new("access/isolated-open.md", """
        ---
        kind: access
        id: isolated-open
        start: ⟦true⟧
        who: technician
        ---
        """);

    public RuleExample Good { get; } = new("access/isolated-open.md", """
        ---
        kind: access
        id: isolated-open
        who: technician
        ---
        """);

    public ImmutableArray<ExamplePair> More { get; } =
    [
        new ExamplePair(
            new RuleExample("access/isolated-open.md", """
            ---
            kind: access
            id: isolated-open
            verify: ⟦true⟧
            who: technician
            ---
            """),
            new RuleExample("access/isolated-open.md", """
            ---
            kind: access
            id: isolated-open
            who: technician
            ---
            """)),
    ];

    public IEnumerable<Diagnostic> Check(Pages pages) =>
        Marks.SelectMany(mark => Check(pages, [.. pages.OfKind(PageKind.Access)], mark.Field, mark.What));

    private IEnumerable<Diagnostic> Check(Pages pages, Page[] states, string field, string what)
    {
        Page[] marked = [.. states.Where(page => page.Front!.Field(field)?.Text == "true")];
        if (marked.Length == 0 && states.Length > 0
            && !pages.Lacks(PageKind.Access, page => page.Front is { Problem: null }))
        {
            return [states[0].Error(Name, states[0].IdSpan, $"no access state is {what}",
                $"write `{field}: true` in one of them")];
        }

        return marked.Skip(1).Select(page => page.Error(Name, page.Front!.Field(field)!.Span,
            $"`{marked[0].Id}` is {what} already", $"write `{field}: true` in one access state only"));
    }
}
