using DxAssistant.Knowledge.Content.Constructs;
using DxAssistant.Knowledge.Content.Rules.Frame;
using DxAssistant.Knowledge.Content.Rules.Linking;
using DxAssistant.Knowledge.Content.Shapes;
using DxAssistant.Knowledge.Content.Syntax;

namespace DxAssistant.Knowledge.Content.Rules.Diagnosis;

/// <summary>A fault that no check can see, so that nobody could prove it.</summary>
/// <example>Bad: <c>a fault in no table of likelihoods</c>. Good: <c>| [Room sensor failed](…) | seldom | …
/// |</c>.</example>
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

    public object? Gather(Page page, Pages pages) => new Sight(Mention.Of(page, pages) with
    {
        IsUnclear = page.Kind == PageKind.Check
            ? page.Section("Likelihoods")?.Table is null
            : page.Kind is null && PageShapes.Of(PageKind.Check).Holds(page.Path),
        Paths = page.Kind == PageKind.Check ? [.. SeenBy(page, pages).Select(fault => fault.Path)] : [],
        IfNowhere = page.Kind == PageKind.Fault && page.Id != MissingPage.NoneOfThese
            ? page.Error(Name, page.IdSpan, $"no check can see the fault `{page.Id}`",
                "give it a row in the likelihoods of a check of that series that differs from `every other fault`")
            : null,
    })
    {
        Series = page.Kind == PageKind.Check ? [.. SeriesOf.Listed(page)]
            : page.Kind == PageKind.Fault ? [.. SeriesOf.Pages(pages, page).Select(series => series.Id)] : [],
    };

    public IEnumerable<Diagnostic> Conclude(IReadOnlyCollection<object> gathered)
    {
        Sight[] all = [.. gathered.Cast<Sight>()];
        if (all.Any(page => page.Mention.IsUnclear)) return [];
        HashSet<string> meant = new(all.SelectMany(page => page.Mention.Meant), StringComparer.Ordinal);
        ILookup<string, Sight> seen = all.SelectMany(check => check.Mention.Paths.Select(fault => (fault, check)))
            .ToLookup(pair => pair.fault, pair => pair.check, StringComparer.Ordinal);
        ILookup<(PageKind?, string), Mention> same = all.Select(page => page.Mention).ToLookup(page => page.Is);
        return all.Where(fault => fault.Mention.IfNowhere is not null
            && fault.Mention.IsTheOneOf([.. same[fault.Mention.Is]]) && !meant.Contains(fault.Mention.Path))
            .Select(fault => Blind(fault, [.. seen[fault.Mention.Path]])).OfType<Diagnostic>();
    }

    private static Diagnostic? Blind(Sight fault, Sight[] checks)
    {
        Diagnostic nowhere = fault.Mention.IfNowhere!;
        if (checks.Length == 0) return nowhere;
        string[] blind = [.. fault.Series.Where(series => !checks.Any(check => check.Includes(series)))
            .Select(series => $"`{series}`")];
        return blind.Length == 0 ? null : nowhere with { Message = $"{nowhere.Message} in {string.Join(", ", blind)}" };
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
