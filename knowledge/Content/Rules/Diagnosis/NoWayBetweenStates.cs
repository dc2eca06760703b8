using DxAssistant.Knowledge.Content.Syntax;

namespace DxAssistant.Knowledge.Content.Rules.Diagnosis;

/// <summary>Two access states without minutes from one to the other, directly or through others.</summary>
/// <example>Bad: <c>no row from closed-running</c>. Good: <c>| [Closed and running](closed-running.md) | 8
/// |</c>.</example>
internal sealed class NoWayBetweenStates : IContentRule
{
    public string Name => "no-way-between-states";

    public string Meaning => "Two access states without minutes from one to the other, directly or through others.";

    public bool LooksAtAll => true;

    public RuleExample Bad { get; } = new("access/isolated-open.md", """
        ## ⟦Ways here⟧
        | From | Minutes |
        |---|---|
        | [Isolated](isolated-open.md) | 3 |
        """);

    public RuleExample Good { get; } = new("access/isolated-open.md", """
        ## Ways here
        | From | Minutes |
        |---|---|
        | [Closed and running](closed-running.md) | 8 |
        """);

    public IEnumerable<Diagnostic> Check(Pages pages)
    {
        Page[] states = [.. pages.OfKind(PageKind.Access)];
        ILookup<Page, Page> from = states.SelectMany(to => Ways(pages, to).Select(way => (way, to)))
            .ToLookup(way => way.way, way => way.to);
        ILookup<Page, Page> missing = states
            .SelectMany(start => states.Except(Reached(start, from)).Select(end => (end, start)))
            .ToLookup(pair => pair.end, pair => pair.start);
        return missing.Where(pair => pair.Key.Section("Ways here")?.Table is not null).Select(pair => pair.Key.Error(
            Name, pair.Key.Section("Ways here")!.Heading.Span,
            "no way leads here from " + string.Join(", ", pair.Select(start => $"`{start.Id}`")
                .Order(StringComparer.Ordinal)),
            "add a row with its minutes here, or on the way between"));
    }

    private static IEnumerable<Page> Ways(Pages pages, Page to) =>
        to.Section("Ways here")?.Table?.Rows.Select(
            row => pages.Target(to, row.Cell(0)?.Link, PageKind.Access)).OfType<Page>() ?? [];

    private static HashSet<Page> Reached(Page start, ILookup<Page, Page> ways)
    {
        HashSet<Page> reached = [start];
        var ahead = new Queue<Page>(reached);
        while (ahead.TryDequeue(out Page? here))
        {
            foreach (Page next in ways[here].Where(reached.Add))
            {
                ahead.Enqueue(next);
            }
        }

        return reached;
    }
}
