using System.Collections.Immutable;
using System.Globalization;
using DxAssistant.Server.Commands;

namespace DxAssistant.Server.Simulating;

/// <summary>The figures of a simulation as a Markdown table, and each walk that failed with what repeats it.</summary>
internal static class SimulationReport
{
    private const int FailuresShown = 20;

    /// <summary>Writes the table.</summary>
    /// <param name="each">Also a row for each symptom on each series by each role.</param>
    public static void Write(TextWriter output, SimulationOrder order, ImmutableArray<SimulatedWalk> walks,
        bool each = false)
    {
        output.Write(
            Line($"Seed {order.Seed}, {walks.Length} walks. In brackets: between these lies the true value with 95 %.")
                + "\n\n");
        output.Write(
            "| | walks | rightly ended, % | proven, % | missed, % | visits in vain, % | without an end | with a wrong "
                + "part, % | the same of those not booked, % | booked | fault named there, % | checks | minutes "
                + "|\n|---|---|---|---|---|---|---|---|---|---|---|---|---|\n");
        Row(output, "all", walks);
        Rows(output, walks, walk => walk.Case.Play.ToString());
        Rows(output, walks, walk => walk.Case.Role);
        Rows(output, walks, walk => walk.Case.Series);
        Rows(output, walks, walk => walk.Case.Symptom);
        if (each) Rows(output, walks, walk => $"{walk.Case.Symptom}, {walk.Case.Series}, {walk.Case.Role}");
        Failures(output,
            [.. walks.Where(walk => walk.End is not (WalkEnd.Proven or WalkEnd.Booked) || walk.WrongParts > 0)]);
    }

    private static void Rows(TextWriter output, ImmutableArray<SimulatedWalk> walks, Func<SimulatedWalk, string> key)
    {
        foreach (IGrouping<string, SimulatedWalk> group in walks.GroupBy(key, StringComparer.Ordinal)
            .OrderBy(group => group.Key, StringComparer.Ordinal))
            Row(output, group.Key, group);
    }

    private static void Row(TextWriter output, string name, IEnumerable<SimulatedWalk> walks)
    {
        WalkTally tally = WalkTally.Of([.. walks]);
        string minutes = double.IsNaN(tally.MinutesEither)
            ? Line($"{tally.Minutes:0}")
            : Line($"{tally.Minutes:0} ± {tally.MinutesEither:0}");
        output.Write(
            Line(
                $"| {name} | {tally.Walks} | {Share(tally.Proven + tally.Booked, tally.Walks)} | {Share(tally.Proven, tally.Within)} | {Share(tally.Missed, tally.Walks)} | {Share(tally.VisitsInVain, tally.Walks)} | {tally.Stuck} | {Share(tally.WrongWalks, tally.Walks)} | {Share(tally.WrongWalksWithin, tally.Within)} | {tally.Booked} | {Share(tally.Named, tally.Booked)} | {tally.Checks:0.0} | {minutes} |") + "\n");
    }

    private static string Share(int hits, int of)
    {
        if (of == 0) return "–";
        (double low, double high) = WalkTally.Wilson(hits, of);
        return Line($"{100.0 * hits / of:0.0} ({100 * low:0.0}–{100 * high:0.0})");
    }

    private static void Failures(TextWriter output, ImmutableArray<SimulatedWalk> failures)
    {
        if (failures.IsEmpty) return;
        output.Write(Line($"\n{Counted.Of(failures.Length, "walk")} missed the fault or changed a part for nothing")
            + (failures.Length > FailuresShown ? Line($"; the first {FailuresShown}:") : ":") + "\n");
        foreach (SimulatedWalk walk in failures.Take(FailuresShown))
            output.Write(
                Line(
                    $"- {walk.Case.Symptom}, {walk.Case.Series}, {walk.Case.Role}, {walk.Case.Fault}{Play(walk.Case)}: {walk.End}, {walk.WrongParts} wrong; {string.Join(" > ", walk.Steps)}") + "\n");
    }

    private static string Play(SimulatedCase played) => played switch
    {
        { WrongSign: { } sign } => $", with a maybe {sign}",
        { VainPart: { } part } => $", {part} changed before",
        { Second: { } second } => $", then {second.Symptom} by {second.Fault}",
        { Play: Simulating.Play.Doubts } => ", with doubts",
        _ => "",
    };

    private static string Line(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
