using DxAssistant.Knowledge.Content.Constructs;
using DxAssistant.Knowledge.Content.Syntax;

namespace DxAssistant.Knowledge.Content.Rules;

/// <summary>A fault that no check can see, so that nobody could prove it.</summary>
/// <example>Bad: <c>a fault in no table of likelihoods</c>. Good: <c>| [Room sensor failed](…) | seldom | … |</c>.</example>
internal sealed class UnseenFault : IGatheringRule
{
    public string Name => "unseen-fault";

    public string Meaning => "A fault that no check can see, so that nobody could prove it.";

    public RuleExample Bad { get; } = new("checks/room-sensor.md", """
        ## Likelihoods
        | Fault | on-curve | off-curve | open | short |
        |---|---|---|---|---|
        | [Fan motor failed](../faults/fan-motor-failed.md) | seldom | sometimes | sometimes | |
        | every other fault | 0.97 | 0.01 | 0.01 | 0.01 |
        """);

    public RuleExample Good { get; } = new("checks/room-sensor.md", """
        ## Likelihoods
        | Fault | on-curve | off-curve | open | short |
        |---|---|---|---|---|
        | [Room sensor failed](../faults/room-sensor-failed.md) | seldom | sometimes | sometimes | |
        | every other fault | 0.97 | 0.01 | 0.01 | 0.01 |
        """);

    public object? Gather(Page page, Pages pages) =>
        page.Kind == PageKind.Check ? SeenBy(page, pages).Select(fault => (fault.Path, Check: page)).ToArray() : null;

    public IEnumerable<Diagnostic> Conclude(Pages pages, IReadOnlyCollection<object> gathered)
    {
        if (pages.Lacks(PageKind.Check, page => page.Section("Likelihoods")?.Table is not null)) return [];
        ILookup<string, Page> seen = gathered.Cast<(string Path, Page Check)[]>().SelectMany(pairs => pairs)
            .ToLookup(pair => pair.Path, pair => pair.Check, StringComparer.Ordinal);
        return pages.OfKind(PageKind.Fault)
            .Where(fault => fault.Id != MissingPage.NoneOfThese && !pages.MeantByBrokenLinks.Contains(fault))
            .Select(fault => Check(pages, fault, [.. seen[fault.Path]])).OfType<Diagnostic>();
    }

    private Diagnostic? Check(Pages pages, Page fault, Page[] checks)
    {
        string[] blind =
        [
            .. SeriesOf.Pages(pages, fault).Select(series => series.Id)
                .Where(series => !checks.Any(check => SeriesOf.Includes(check, series)))
                .Select(series => $"`{series}`"),
        ];
        string where = checks.Length == 0 ? "" : " in " + string.Join(", ", blind);
        return checks.Length > 0 && blind.Length == 0
            ? null
            : fault.Error(Name, fault.IdSpan, $"no check can see the fault `{fault.Id}`{where}",
                "give it a row in the likelihoods of a check of that series that differs from `every other fault`");
    }

    // A row that another rule reports counts as seeing its fault.
    private static IEnumerable<Page> SeenBy(Page check, Pages pages)
    {
        LikelihoodTable? table = LikelihoodTable.Of(check, pages);
        HashSet<LikelihoodRow> good = [.. table is null || CheckSeparatesNothing.IsTrueOf(table) ? [] : table.GoodRows];
        LikelihoodRow? other = table?.EveryOther is { } row && good.Contains(row) ? row : null;
        return from line in table?.Rows ?? []
               where line.Fault is not null && SeriesOf.Meet(check, line.Fault)
               where other is null || !good.Contains(line) || !CheckSeparatesNothing.IsSame(line, other)
               select line.Fault;
    }
}
