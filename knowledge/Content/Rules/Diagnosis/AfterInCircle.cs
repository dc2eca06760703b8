using System.Collections.Immutable;
using DxAssistant.Knowledge.Content.Syntax;

namespace DxAssistant.Knowledge.Content.Rules.Diagnosis;

/// <summary>A check that is to come after itself, through others or at once.</summary>
/// <example>Bad: <c>after: [fan-plug]</c> on <c>fan-plug</c>. Good: no such line.</example>
internal sealed class AfterInCircle : IContentRule
{
    public string Name => "after-in-circle";

    public string Meaning => "A check that is to come after itself, through others or at once.";

    public RuleExample Bad { get; } = new("checks/fan-plug.md", """
        ---
        kind: check
        id: fan-plug
        minutes: 3
        access: [isolated-open]
        who: technician
        after: [⟦fan-plug⟧]
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

    public bool LooksAtAll => true;

    // One circle, one diagnostic: on the page of it that comes first by its id.
    public IEnumerable<Diagnostic> Check(Pages pages)
    {
        Page[] named = [.. pages.OfKind(PageKind.Check).Where(page => !Named(page).IsEmpty)];
        ImmutableSortedDictionary<string, ImmutableArray<FrontMatterValue>> after = named
            .GroupBy(page => page.Id)
            .ToImmutableSortedDictionary(same => same.Key, same => Named(same.First()), StringComparer.Ordinal);
        return from page in named
               from value in Named(page)
               let reached = Reached(value.Text, after)
               where reached.Contains(page.Id)
                   && !reached.Any(other => string.CompareOrdinal(other, page.Id) < 0
                       && Reached(other, after).Contains(page.Id))
               select page.Error(Name, value.Span,
                   $"`{page.Id}` comes after `{value.Text}`, and that after `{page.Id}`",
                   "leave out the one that by custom comes first");
    }

    private static ImmutableArray<FrontMatterValue> Named(Page page) =>
        [.. page.Front?.Field("after")?.Values ?? []];

    // The check itself and all that come before it.
    private static HashSet<string> Reached(string from,
        ImmutableSortedDictionary<string, ImmutableArray<FrontMatterValue>> after)
    {
        HashSet<string> reached = [];
        Stack<string> open = new([from]);
        while (open.TryPop(out string? id))
            if (reached.Add(id) && after.TryGetValue(id, out ImmutableArray<FrontMatterValue> named))
                foreach (FrontMatterValue value in named) open.Push(value.Text);
        return reached;
    }
}
