using DxAssistant.Knowledge.Content.Syntax;

namespace DxAssistant.Knowledge.Content.Rules;

/// <summary>None, or more than one, of the access states is where a repair is verified.</summary>
/// <example>Bad: <c>verify: true in two access states</c>. Good: <c>verify: true in one</c>.</example>
internal sealed class NotOneVerify : IContentRule
{
    public string Name => "not-one-verify";

    public RuleExample Bad { get; } = new("access/isolated-open.md", """
        ---
        kind: access
        id: isolated-open
        verify: ⟦true⟧
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

    public IEnumerable<Diagnostic> Check(Pages pages)
    {
        Page[] states = [.. pages.OfKind(PageKind.Access)];
        Page[] marked = [.. states.Where(page => page.Front!.Field("verify")?.Text == "true")];
        if (marked.Length == 0 && states.Length > 0
            && !pages.Lacks(PageKind.Access, page => page.Front is { Problem: null }))
        {
            return [states[0].Error(Name, states[0].IdSpan, "no access state is where a repair is verified",
                "write `verify: true` in one of them")];
        }

        return marked.Skip(1).Select(page => page.Error(Name, page.Front!.Field("verify")!.Span,
            $"`{marked[0].Id}` is where a repair is verified already",
                "write `verify: true` in one access state only"));
    }
}
