using System.Collections.Immutable;
using System.Globalization;
using DxAssistant.Graph.Model;
using DxAssistant.Graph.Planning;
using DxAssistant.Graph.Testability;
using DxAssistant.Knowledge.Content;

namespace DxAssistant.Server.Commands.Authoring;

/// <summary>Writes the figures of the pages as Markdown tables.</summary>
internal static class StatsTable
{
    private const string Head =
        "| symptom | faults | detected | could be isolated to 1 / 2 / 3 repairs | faults that look alike | mended by repair 1 / 2 / 3"
        + " | checks | minutes | repairs in vain | handed over | priced minutes, least possible | how |\n"
        + "|---|---|---|---|---|---|---|---|---|---|---|---|\n";

    public static void Write(
        ImmutableArray<SeriesStats> all, ImmutableArray<PriceStats> prices, Role role, Library library, int work, TextWriter output)
    {
        output.Write($"Person at the unit: {role.Id}. ± is half of a 95 % confidence interval; without it the figure is exact.\n");
        output.Write($"{WorkOf(work)}\n");
        foreach (SeriesStats series in all)
        {
            output.Write($"\n## {series.Series}\n\n{Head}");
            foreach (SymptomFigures symptom in series.Report.Symptoms)
                Row(symptom.Symptom.Value, $"{symptom.Faults}", symptom.Detected, symptom.IsolatableTo, symptom.MeanGroup,
                    symptom.Walks, symptom.PricedMinutes, symptom.LeastMinutes, output);
            OverallFigures overall = series.Report.Overall;
            Row("all, as often as met", "", overall.Detected, repairs => overall.IsolatableTo[repairs - 1], overall.MeanGroup,
                overall.Walks, overall.PricedMinutes, overall.LeastMinutes, output);
            Alike(series.Report, library, output);
            RulesTable.Write(series.Report, library, output);
        }

        Prices(prices, output);
    }

    private static void Row(
        string name, string faults, double detected, Func<int, double> isolatable, double group, WalkFigures? walks,
        double? priced, double? least, TextWriter output)
    {
        string[] cells =
        [
            name, faults, Percent(detected), string.Join(" / ", Enumerable.Range(1, 3).Select(to => Percent(isolatable(to)))),
            Text(group, "0.00"),
            walks is null ? "–" : string.Join(" / ", walks.IsolatedTo.Select(share => Percent(share.Value))),
            Figure(walks?.Checks, "0.0"), Figure(walks?.Minutes, "0.0"), Figure(walks?.RepairsInVain, "0.00"),
            walks is null ? "–" : Percent(walks.HandedOver.Value), Gap(priced, least),
            walks is null ? "nothing to walk" : walks.IsExact ? "exact" : $"{walks.Count} walks",
        ];
        output.Write($"| {string.Join(" | ", cells)} |\n");
    }

    private static string Gap(double? priced, double? least) =>
        priced is null || least is null ? "–" : $"at most {Text(priced.Value, "0.0")}, at least {Text(least.Value, "0.0")}";

    private static void Alike(TestabilityReport report, Library library, TextWriter output)
    {
        output.Write("\nFaults that no check tells apart: ");
        output.Write(report.ToldApartByNoCheck.IsEmpty ? "none.\n" : "\n");
        foreach (AmbiguityGroup group in report.ToldApartByNoCheck)
            output.Write($"- {string.Join("; ", group.Faults.Select(fault => library.Faults[fault].Title.Text))}\n");
    }

    private static void Prices(ImmutableArray<PriceStats> prices, TextWriter output)
    {
        if (prices.IsEmpty) return;
        output.Write("\n## Minutes against wrong parts\n\n| price of a wrong part, times the pages' | minutes | repairs in vain"
            + " | minutes paid for each repair in vain that is saved |\n|---|---|---|---|\n");
        for (int place = 0; place < prices.Length; place++)
        {
            PriceStats price = prices[place];
            string rate = "–";
            if (place > 0 && prices[place - 1].InVain - price.InVain is > 1e-6 and double saved)
                rate = Text((price.Minutes - prices[place - 1].Minutes) / saved, "0");
            output.Write($"| {Text(price.Factor, "0.#")} | {Text(price.Minutes, "0.0")} | {Text(price.InVain, "0.000")} | {rate} |\n");
        }
    }

    private static string WorkOf(int work) => work == LivePlanner.UsualWork
        ? $"Each step is planned with the work that conversations use, {work}, and walked by the rules that they lay over the plan."
        : $"Each step is planned with the work {work}. Conversations use {LivePlanner.UsualWork}, so theirs may be other walks.";

    private static string Percent(double share) => Text(share * 100, "0") + " %";

    internal static string Figure(Estimate? estimate, string format) => estimate is not { } figure
        ? "–"
        : figure.HalfWidth > 0 ? $"{Text(figure.Value, format)} ± {Text(figure.HalfWidth, format)}" : Text(figure.Value, format);

    internal static string Text(double value, string format) => value.ToString(format, CultureInfo.InvariantCulture);
}
