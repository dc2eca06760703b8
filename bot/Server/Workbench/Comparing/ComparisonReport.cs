using System.Collections.Immutable;
using System.Globalization;
using DxAssistant.Graph.Testability;
using DxAssistant.Server.Commands;

namespace DxAssistant.Server.Workbench.Comparing;

/// <summary>Writes what an edit does, in Markdown, so that it can stand under a proposal.</summary>
internal static class ComparisonReport
{
    public static void Write(
        TextWriter output, ImmutableArray<ChangedSymptom> symptoms, ImmutableArray<ChangedConclusion>? cases,
        int replayed, ImmutableArray<BrokenFloor> broken)
    {
        List(output, "Floors broken", broken.Where(floor => !floor.MayBeChance));
        List(output, "Below a floor, and perhaps by chance: play more walks (`--walks`)",
            broken.Where(floor => floor.MayBeChance));
        output.Write(symptoms.IsEmpty ? "No walk can have changed.\n" : "## Figures\n\n"
            + "| series | symptom | minutes | checks | repairs in vain | mended by the first repair, % | faults alike "
            + "| how |\n|---|---|---|---|---|---|---|---|\n");
        foreach (ChangedSymptom symptom in symptoms) Row(output, symptom);
        Walks(output, symptoms);
        if (cases is { } changed) Cases(output, changed, replayed);
    }

    private static void List(TextWriter output, string head, IEnumerable<BrokenFloor> floors)
    {
        string lines = string.Concat(floors.Select(floor => $"- {floor.What}\n"));
        if (lines.Length > 0) output.Write($"## {head}\n\n{lines}\n");
    }

    private static void Row(TextWriter output, ChangedSymptom symptom)
    {
        WalkFigures? before = symptom.Before?.Walks, after = symptom.After?.Walks;
        string[] cells =
        [
            symptom.Series, symptom.Symptom, Pair(before?.Minutes, after?.Minutes, "0.0"),
            Pair(before?.Checks, after?.Checks, "0.0"),
            Pair(before?.RepairsInVain, after?.RepairsInVain, "0.00"),
            Pair(Percent(before), Percent(after), "0"),
            $"{Text(symptom.Before?.MeanGroup, "0.00")} → {Text(symptom.After?.MeanGroup, "0.00")}",
            before is { IsExact: true } && after is { IsExact: true } ? "exact" : "played",
        ];
        output.Write($"| {string.Join(" | ", cells)} |\n");
    }

    private static Estimate? Percent(WalkFigures? walks) => walks?.IsolatedTo[0].Times(100);

    // A 95 % interval stands behind what was played.
    private static string Pair(Estimate? before, Estimate? after, string format)
    {
        string change = before is { } one && after is { } other
            ? $" ({(other.Value - one.Value).ToString("+" + format + ";−" + format + ";0", CultureInfo.InvariantCulture)})" : "";
        return $"{Text(before, format)} → {Text(after, format)}{change}";
    }

    private static string Text(Estimate? figure, string format) => figure is not { } value ? "–"
        : value.HalfWidth > 0 && double.IsFinite(value.HalfWidth)
        ? EstimateText.Of(value, format)
        : Text(value.Value, format);

    private static string Text(double? value, string format) =>
        value?.ToString(format, CultureInfo.InvariantCulture) ?? "–";

    // What is the same on several series, or for several faults, is written once.
    private static void Walks(TextWriter output, ImmutableArray<ChangedSymptom> symptoms)
    {
        var each = symptoms.SelectMany(symptom =>
            symptom.Walks.Select(walk => (symptom.Series, symptom.Symptom, Walk: walk, Steps: Steps(walk))));
        var onSeries = each.GroupBy(one => (one.Symptom, one.Walk.Fault, one.Steps))
            .Select(same => (same.Key, same.First().Walk, Series: string.Join(", ", same.Select(one => one.Series))));
        foreach (var same in onSeries.GroupBy(one => (one.Series, one.Key.Symptom, one.Key.Steps)))
        {
            output.Write(
                $"\n### {same.Key.Series}, {same.Key.Symptom}: walk to {string.Join(", ", same.Select(one => one.Walk.Fault))}\n\n");
            Walk(output, same.First().Walk);
        }
    }

    private static string Steps(ChangedWalk walk) =>
        string.Join('\n', walk.Before) + "\n\n" + string.Join('\n', walk.After);

    // The step from which the two part is in bold.
    private static void Walk(TextWriter output, ChangedWalk walk)
    {
        output.Write("| before | after |\n|---|---|\n");
        int parted = Enumerable.Range(0, Math.Max(walk.Before.Length, walk.After.Length))
            .First(place => At(walk.Before, place) != At(walk.After, place));
        for (int place = 0; place < Math.Max(walk.Before.Length, walk.After.Length); place++)
            output.Write(
                $"| {Marked(At(walk.Before, place), place == parted)} | {Marked(At(walk.After, place), place == parted)} |\n");
    }

    private static string At(ImmutableArray<string> steps, int place) => place < steps.Length ? steps[place] : "";

    private static string Marked(string step, bool isMarked) => isMarked && step.Length > 0 ? $"**{step}**" : step;

    private static void Cases(TextWriter output, ImmutableArray<ChangedConclusion> changed, int replayed)
    {
        output.Write($"\n## Stored cases\n\n{replayed} said again, {changed.Length} with another conclusion.\n");
        if (changed.IsEmpty) return;
        output.Write("\n| case | before | after | asked otherwise from message |\n|---|---|---|---|\n");
        foreach (ChangedConclusion one in changed)
            output.Write(string.Create(CultureInfo.InvariantCulture,
                $"| {one.Case} | {one.Before} | {one.After} | {(one.Turn == 0 ? "–" : one.Turn)} |\n"));
    }
}
