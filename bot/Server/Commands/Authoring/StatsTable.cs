using System.Collections.Immutable;
using System.Globalization;
using DxAssistant.Graph.Model;
using DxAssistant.Graph.Planning;
using DxAssistant.Graph.Testability;
using DxAssistant.Knowledge.Content;

namespace DxAssistant.Server.Commands.Authoring;

/// <summary>Writes the figures of the pages as Markdown tables.</summary>
internal sealed class StatsTable(Library library, TextWriter output)
{
    private const string Head =
        "| symptom | faults | detected | could be isolated to 1 / 2 / 3 repairs | faults alike to every check | surely to 1 / 2 / 3 repairs | faults easily mistaken"
        + " | mended by repair 1 / 2 / 3, % | checks | minutes | repairs in vain | of these with a part | handed over, % | priced minutes, least possible | how |\n"
        + "|---|---|---|---|---|---|---|---|---|---|---|---|---|---|---|\n";

    /// <summary>Writes what holds for all.</summary>
    public void Begin(Role role, int work) => output.Write($"""
        Person at the unit: {role.Id}. ± is half of a 95 % confidence interval of walks that were drawn: ± 0 where all were alike. Rows marked exact have none.
        Isolated surely: where the best decision between two faults errs in at most one of twenty cases when all checks were done.
        {WorkOf(work)}

        """);

    /// <summary>Writes the figures of one series.</summary>
    public void Write(SeriesStats series)
    {
        output.Write($"\n## {series.Series}\n\n{Head}");
        foreach (SymptomFigures symptom in series.Report.Symptoms)
            Row([
                symptom.Symptom.Value, $"{symptom.Faults}", Percent(symptom.Detected), ToEach(symptom.IsolatableTo), Text(symptom.MeanGroup, "0.00"),
                ToEach(symptom.SurelyIsolatableTo), Text(symptom.MeanLookAlikes, "0.00"),
                .. Walked(symptom.Walks), Gap(symptom.PricedMinutes, symptom.LeastMinutes), How(symptom.Walks)]);
        OverallFigures overall = series.Report.Overall;
        Row([
            "all, as often as met", "", Percent(overall.Detected), ToEach(repairs => overall.IsolatableTo[repairs - 1]), Text(overall.MeanGroup, "0.00"),
            ToEach(repairs => overall.SurelyIsolatableTo[repairs - 1]), Text(overall.MeanLookAlikes, "0.00"),
            .. Walked(overall.Walks), Gap(overall.PricedMinutes, overall.LeastMinutes), How(overall.Walks)]);
        Alike(series.Report);
        RulesTable.Write(series.Report, library, output);
    }

    private void Row(string[] cells) => output.Write($"| {string.Join(" | ", cells)} |\n");

    private static string[] Walked(WalkFigures? walks) => walks is null
        ? ["–", "–", "–", "–", "–", "–"]
        :
        [
            string.Join(" / ", walks.IsolatedTo.Select(share => Percent(share, walks.IsExact))), Figure(walks.Checks, "0.0", walks.IsExact),
            Figure(walks.Minutes, "0.0", walks.IsExact), Figure(walks.RepairsInVain, "0.00", walks.IsExact),
            Figure(walks.PartsInVain, "0.00", walks.IsExact), Percent(walks.HandedOver, walks.IsExact),
        ];

    private static string How(WalkFigures? walks) => walks is null ? "nothing to walk" : walks.IsExact ? "exact" : $"{walks.Count} walks";

    private static string ToEach(Func<int, double> share) => string.Join(" / ", Enumerable.Range(1, WalkFigures.MostRepairs).Select(to => Percent(share(to))));

    private static string Gap(double? priced, double? least) =>
        priced is null || least is null ? "–" : $"at most {Text(priced.Value, "0.0")}, at least {Text(least.Value, "0.0")}";

    private void Alike(TestabilityReport report)
    {
        output.Write("\nFaults that no check tells apart: ");
        output.Write(report.ToldApartByNoCheck.IsEmpty ? "none.\n" : "\n");
        foreach (AmbiguityGroup group in report.ToldApartByNoCheck)
            output.Write($"- {string.Join("; ", group.Faults.Select(fault => library.Faults[fault].Title.Text))}\n");
    }

    /// <summary>Writes what minutes and parts trade for; nothing without prices.</summary>
    public void Prices(ImmutableArray<PricePoint> prices)
    {
        if (prices.IsEmpty) return;
        output.Write("\n## Minutes against wrong parts\n\nThe same units at each price; differences are to the pages' own price.\n\n"
            + "| price of a wrong part, times the pages' | minutes | parts changed for nothing, a walk | more minutes | fewer such parts | minutes for each part saved |\n"
            + "|---|---|---|---|---|---|\n");
        foreach (PricePoint price in prices)
            Row([
                Text(price.Factor, "0.#"), Figure(price.Minutes, "0.0", false), Figure(price.PartsInVain, "0.000", false),
                Figure(price.MinutesMore, "0.0", price.Factor == 1), Figure(price.PartsSaved, "0.000", price.Factor == 1), Rate(price)]);
    }

    // Where the saving may be chance, its price is none.
    private static string Rate(PricePoint price) => Math.Abs(price.PartsSaved.Value) > price.PartsSaved.HalfWidth
        ? Text(price.MinutesMore.Value / price.PartsSaved.Value, "0")
        : "–";

    private static string WorkOf(int work) => work == LivePlanner.UsualWork
        ? $"Each step is planned with the work that conversations use, {work}, and walked by the rules that they lay over the plan."
        : $"Each step is planned with the work {work}. Conversations use {LivePlanner.UsualWork}, so theirs may be other walks.";

    private static string Percent(double share) => Text(share * 100, "0") + " %";

    private static string Percent(Estimate share, bool isExact) =>
        Figure(new Estimate(share.Value * 100, share.HalfWidth * 100), "0", isExact);

    /// <summary>A figure with its interval; a single draw has none.</summary>
    internal static string Figure(Estimate figure, string format, bool isExact) => isExact
        ? Text(figure.Value, format)
        : double.IsFinite(figure.HalfWidth) ? $"{Text(figure.Value, format)} ± {Text(figure.HalfWidth, format)}" : $"{Text(figure.Value, format)} ± ?";

    internal static string Text(double value, string format) => value.ToString(format, CultureInfo.InvariantCulture);
}
