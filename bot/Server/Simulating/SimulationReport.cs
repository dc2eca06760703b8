using System.Collections.Immutable;
using System.Globalization;

namespace DxAssistant.Server.Simulating;

/// <summary>The figures of a simulation as a Markdown table, and each walk that failed with what repeats it.</summary>
internal static class SimulationReport
{
    private const int FailuresShown = 20;

    public static void Write(TextWriter output, SimulationOrder order, ImmutableArray<SimulatedWalk> walks)
    {
        output.Write(Line($"Seed {order.Seed}, {walks.Length} walks.") + "\n\n");
        output.Write("| | walks | proven | 95 % | booked | dead ends | wrong parts a 100 | checks | minutes |\n|---|---|---|---|---|---|---|---|---|\n");
        foreach (IGrouping<string, SimulatedWalk> group in Groups(walks, walk => walk.Case.Symptom)) Row(output, group.Key, group);
        foreach (IGrouping<string, SimulatedWalk> group in Groups(walks, walk => $"{walk.Case.Series}, {walk.Case.Role}")) Row(output, group.Key, group);
        Row(output, "all", walks);
        Failures(output, [.. walks.Where(walk => walk.End is not (WalkEnd.Proven or WalkEnd.Booked) || walk.WrongParts > 0)]);
    }

    private static IOrderedEnumerable<IGrouping<string, SimulatedWalk>> Groups(
        ImmutableArray<SimulatedWalk> walks, Func<SimulatedWalk, string> key) =>
        walks.GroupBy(key, StringComparer.Ordinal).OrderBy(group => group.Key, StringComparer.Ordinal);

    private static void Row(TextWriter output, string name, IEnumerable<SimulatedWalk> walks)
    {
        WalkTally tally = WalkTally.Of([.. walks]);
        (double low, double high) = WalkTally.Wilson(tally.Proven, tally.Within);
        output.Write(Line($"| {name} | {tally.Walks} | {100 * tally.ProvenShare:0.0} % | {100 * low:0.0} to {100 * high:0.0} | {tally.Booked} | {tally.DeadEnds} | {100 * tally.WrongPartsPerWalk:0.0} | {tally.Checks:0.0} | {tally.Minutes:0} |") + "\n");
    }

    private static void Failures(TextWriter output, ImmutableArray<SimulatedWalk> failures)
    {
        if (failures.IsEmpty) return;
        output.Write(Line($"\n{failures.Length} walks missed the fault or changed a part for nothing") + (failures.Length > FailuresShown ? Line($"; the first {FailuresShown}:") : ":") + "\n");
        foreach (SimulatedWalk walk in failures.Take(FailuresShown))
            output.Write(Line($"- {walk.Case.Symptom}, {walk.Case.Series}, {walk.Case.Role}, {walk.Case.Fault}: {walk.End}, {walk.WrongParts} wrong; {string.Join(" > ", walk.Steps)}") + "\n");
    }

    private static string Line(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
