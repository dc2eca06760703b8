using System.Collections.Immutable;
using System.Globalization;

namespace DxAssistant.Cases.Figures;

/// <summary>The figures of the desk as tables. Pure; rows in ordinal order or by count.</summary>
public static class FigureTables
{
    private static readonly ImmutableArray<string> Drawn = ["ended", "no fault found", "first visit"];

    public static ImmutableArray<FigureTable> Of(ImmutableArray<CaseFacts> cases, ImmutableArray<ClaimFacts> claims) =>
        [BySeries(cases), ByFault(cases), Ends(cases), Skipped(cases), Claimed(claims)];

    /// <summary>What of a table is drawn by month: month, thing and count; null when nothing is.</summary>
    public static FigureTable? ToDraw(FigureTable table) => table.Heads switch
    {
        ["month", _, "cases"] => table,
        ["month", ..] => new FigureTable(table.Name, ["month", "what", "cases"],
            [.. table.Rows.SelectMany(
                row => Drawn.Select(what => ImmutableArray.Create(row[0], what, row[table.Heads.IndexOf(what)])))]),
        _ => null,
    };

    private static FigureTable BySeries(ImmutableArray<CaseFacts> cases) => new(
        "series-by-month", ["month", "series", "cases"],
        Counted(cases.Select(facts => (facts.Month, Series: facts.Series ?? ""))));

    private static FigureTable ByFault(ImmutableArray<CaseFacts> cases) => new(
        "faults-by-month", ["month", "fault", "cases"],
        Counted(cases.SelectMany(facts => facts.Faults.Select(fault => (facts.Month, fault)))));

    private static FigureTable Ends(ImmutableArray<CaseFacts> cases) => new(
        "ends-by-month",
        ["month", "ended", "no fault found", "first fix", "first visit", "repairs in vain", "median minutes to proof"],
        [
            .. cases.Where(facts => facts.Ended is not null).GroupBy(facts => facts.Month, StringComparer.Ordinal)
                .OrderBy(month => month.Key, StringComparer.Ordinal).Select(month => ImmutableArray.Create(
                    month.Key, Text(month.Count()), Text(month.Count(facts => facts.IsNothingFound)),
                    Text(month.Count(facts => facts.IsFirstFix)), Text(month.Count(facts => facts.IsFirstVisit)),
                    Text(month.Sum(facts => facts.InVain)),
                    Median([.. month.Select(facts => facts.MinutesToProof).OfType<double>().Order()]))),
        ]);

    private static FigureTable Skipped(ImmutableArray<CaseFacts> cases) => new(
        "skipped-checks", ["check", "times"],
        [
            .. cases.SelectMany(facts => facts.Skipped).GroupBy(check => check, StringComparer.Ordinal)
                .OrderByDescending(check => check.Count()).ThenBy(check => check.Key, StringComparer.Ordinal)
                .Select(check => ImmutableArray.Create(check.Key, Text(check.Count()))),
        ]);

    private static FigureTable Claimed(ImmutableArray<ClaimFacts> claims) => new(
        "claimed-parts", ["part", "claims", "without proof"],
        [
            .. claims.GroupBy(claim => claim.Part, StringComparer.Ordinal)
                .OrderByDescending(part => part.Count(claim => !claim.IsProven))
                .ThenBy(part => part.Key, StringComparer.Ordinal)
                .Select(part => ImmutableArray.Create(part.Key, Text(part.Count()),
                    Text(part.Count(claim => !claim.IsProven)))),
        ]);

    private static ImmutableArray<ImmutableArray<string>> Counted(IEnumerable<(string Month, string What)> pairs) =>
    [
        .. pairs.GroupBy(pair => pair).OrderBy(pair => pair.Key.Month, StringComparer.Ordinal)
            .ThenBy(pair => pair.Key.What, StringComparer.Ordinal)
            .Select(pair => ImmutableArray.Create(pair.Key.Month, pair.Key.What, Text(pair.Count()))),
    ];

    private static string Median(ImmutableArray<double> sorted) => sorted.Length == 0 ? ""
        : Text(Math.Round((sorted[(sorted.Length - 1) / 2] + sorted[sorted.Length / 2]) / 2, 1));

    private static string Text(double number) => number.ToString(CultureInfo.InvariantCulture);
}
