using System.Collections.Immutable;
using DxAssistant.Graph.Model;
using DxAssistant.Graph.Planning;
using DxAssistant.Graph.Testability;
using DxAssistant.Knowledge.Content;

namespace DxAssistant.Server.Commands.Authoring;

/// <summary>Writes the figures of the pages as Markdown tables.</summary>
internal sealed class StatsTable(Library library, TextWriter output)
{
    private const string Head =
        "| symptom | faults | surely isolated to 1 / 2 / 3 repairs | faults easily mistaken | mended by repair 1 / 2 / 3, % | checks | minutes | repairs in vain"
        + " | of these with a part | handed over, % | priced minutes, least possible | detected | could be isolated to "
        + "1 / 2 / 3 repairs | faults alike to every check | how |\n"
        + "|---|---|---|---|---|---|---|---|---|---|---|---|---|---|---|\n";

    /// <summary>Writes what holds for all.</summary>
    public void Begin(Role role, int work) => output.Write($"""
        Person at the unit: {role.Id}. Of walks that were drawn ± is half of a 95 % confidence interval, or both its ends stand in brackets: Wilson's for shares; for minutes Student's t, not below 0; for how often something happens in a walk the wider of both, and 3 in so many walks at most where it never did (rule of three). *All alike*: all drawn were, which says nothing of the next. Over symptoms each is worth as many walks as the weights leave. Rows marked exact have none.
        Surely isolated: where the best decision between two faults errs in at most one of twenty cases when all checks were done, as checks show now this, now that; judged by a bound on that error, so rather too few. Could be isolated: where some check gives rows that are not the same, however near.
        {WorkOf(work)}

        """);

    /// <summary>Writes the figures of one series.</summary>
    public void Write(SeriesStats series)
    {
        output.Write($"\n## {series.Series}\n\n{Head}");
        foreach (SymptomFigures symptom in series.Report.Symptoms)
            Row([
                symptom.Symptom.Value, $"{symptom.Faults}", ToEach(symptom.SurelyIsolatableTo),
                Text(symptom.MeanLookAlikes, "0.00"),
                .. Walked(symptom.Walks), Gap(symptom.PricedMinutes, symptom.LeastMinutes),
                Percent(symptom.Detected), ToEach(symptom.IsolatableTo), Text(symptom.MeanGroup, "0.00"),
                How(symptom.Walks)]);
        OverallFigures overall = series.Report.Overall;
        Row([
            "all, as often as met", "", ToEach(repairs => overall.SurelyIsolatableTo[repairs - 1]),
            Text(overall.MeanLookAlikes, "0.00"),
            .. Walked(overall.Walks), Gap(overall.PricedMinutes, overall.LeastMinutes),
            Percent(overall.Detected), ToEach(repairs => overall.IsolatableTo[repairs - 1]),
            Text(overall.MeanGroup, "0.00"), How(overall.Walks)]);
        Mistaken(series.Report);
        Alike(series.Report);
        RulesTable.Write(series.Report, library, output);
    }

    private void Row(string[] cells) => output.Write($"| {string.Join(" | ", cells)} |\n");

    private static string[] Walked(WalkFigures? walks) => walks is null
        ? ["–", "–", "–", "–", "–", "–"]
        :
        [
            string.Join(" / ", walks.IsolatedTo.Select(share => Percent(share, walks.IsExact))),
            Figure(walks.Checks, "0.0", walks.IsExact),
            Figure(walks.Minutes, "0.0", walks.IsExact), Figure(walks.RepairsInVain, "0.00", walks.IsExact),
            Figure(walks.PartsInVain, "0.00", walks.IsExact), Percent(walks.HandedOver, walks.IsExact),
        ];

    private static string How(WalkFigures? walks) =>
        walks is null ? "nothing to walk" : walks.IsExact ? "exact" : $"{walks.Count} walks";

    private static string ToEach(Func<int, double> share) =>
        string.Join(" / ", Enumerable.Range(1, WalkFigures.MostRepairs).Select(to => Percent(share(to))));

    private static string Gap(double? priced, double? least) =>
        priced is null || least is null
            ? "–"
            : $"at most {Text(priced.Value, "0.0")}, at least {Text(least.Value, "0.0")}";

    private void Mistaken(TestabilityReport report)
    {
        ImmutableArray<SymptomFigures> some = [.. report.Symptoms.Where(symptom => !symptom.Mistaken.IsEmpty)];
        output.Write(
            "\nFaults most easily mistaken for one another, and how often the best decision between the two errs when "
                + "all checks were done; not those that one repair mends:");
        output.Write(some.IsEmpty ? " none.\n" : "\n\n");
        foreach (SymptomFigures symptom in some)
            output.Write($"- {symptom.Symptom}: {string.Join("; ", symptom.Mistaken.Select(Pair))}\n");
    }

    private string Pair(MistakenPair pair) =>
        $"{library.Faults[pair.One].Title.Text} / {library.Faults[pair.Other].Title.Text} {Text(pair.Error * 100, "0")} %";

    private void Alike(TestabilityReport report)
    {
        output.Write("\nFaults that no check tells apart: ");
        output.Write(report.ToldApartByNoCheck.IsEmpty ? "none.\n" : "\n");
        foreach (AmbiguityGroup group in report.ToldApartByNoCheck)
            output.Write($"- {string.Join("; ", group.Faults.Select(fault => library.Faults[fault].Title.Text))}\n");
    }

    private static string WorkOf(int work) => work == LivePlanner.UsualWork
        ? $"Each step is planned with the work that conversations use, {work}, and walked by the rules that they lay over the plan."
        : $"Each step is planned with the work {work}. Conversations use {LivePlanner.UsualWork}, so theirs may be other walks.";

    private static string Percent(double share) => Text(share * 100, "0") + " %";

    private static string Percent(Estimate share, bool isExact) => Figure(share.Times(100), "0", isExact);

    /// <summary>A figure with its interval, which an exact one does not have.</summary>
    internal static string Figure(Estimate figure, string format, bool isExact) =>
        isExact ? Text(figure.Value, format) : EstimateText.Of(figure, format);

    private static string Text(double value, string format) => EstimateText.Of(value, format);
}
