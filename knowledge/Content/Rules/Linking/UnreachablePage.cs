using DxAssistant.Knowledge.Content.Rules.Diagnosis;
using DxAssistant.Knowledge.Content.Shapes;
using DxAssistant.Knowledge.Content.Syntax;

namespace DxAssistant.Knowledge.Content.Rules.Linking;

/// <summary>A page that no chain of links from the index leads to.</summary>
/// <example>Bad: <c>a page that nothing links to</c>. Good: <c>the page linked from index.md</c>.</example>
internal sealed class UnreachablePage : IGatheringRule
{
    public string Name => "unreachable-page";

    public string Meaning => "A page that no chain of links from the index leads to.";

    public RuleExample Bad { get; } = new("cautions/hot-pipe.md", """
        ---
        kind: caution
        id: ⟦hot-pipe⟧
        ---
        # Hot pipe

        ## Danger
        It burns.

        ## Do
        - Let it cool.
        """);

    public RuleExample Good { get; } = new("checks/fan-plug.md", """
        ## Cautions
        - [Live mains](../cautions/live-mains.md)
        """);

    // A fault or repair hangs on its symptoms or faults, which FaultWithoutSymptom and RepairWithoutFault look at. The
    // links of an unparsed or empty page are not known.
    public object? Gather(Page page, Pages pages) => Mention.Of(page, pages) with
    {
        IsUnclear = page.Unparsed is not null || page.Source.IsNoText || (page.Front is null && page.Title is null),
        Paths = [.. page.LinkedPaths.OfType<string>()],
        IfNowhere = page.Kind is null or PageKind.Fault or PageKind.Repair ? null
            : page.Error(Name, page.IdSpan, "no link leads from `index.md` to this page",
                "link to it from `index.md` or from a page that is linked there"),
    };

    public IEnumerable<Diagnostic> Conclude(IReadOnlyCollection<object> gathered)
    {
        Dictionary<string, Mention> pages = gathered.Cast<Mention>()
            .ToDictionary(page => page.Path, StringComparer.Ordinal);
        if (pages.Values.FirstOrDefault(page => page.Is.Kind == PageKind.Index) is not { } index
            || pages.Values.Any(page => page.IsUnclear))
            return [];
        HashSet<string> reached = [index.Path, .. pages.Values.SelectMany(page => page.Meant)];
        var ahead = new Queue<string>(reached);
        while (ahead.TryDequeue(out string? path))
            foreach (string next in pages[path].Paths)
                if (pages.ContainsKey(next) && reached.Add(next)) ahead.Enqueue(next);
        Mention[] left = [.. pages.Values.Where(page => page.IfNowhere is not null && !reached.Contains(page.Path))];
        return Mention.Blamed(left, pages.Values);
    }
}
