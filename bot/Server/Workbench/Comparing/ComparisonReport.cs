using System.Collections.Immutable;
using System.Globalization;
using DxAssistant.Graph.Testability;

namespace DxAssistant.Server.Workbench.Comparing;

/// <summary>Writes what an edit does, in Markdown, so that it can stand under a proposal.</summary>
internal static class ComparisonReport
{
    public static void Write(
        TextWriter output, ImmutableArray<ChangedSymptom> symptoms, ImmutableArray<ChangedConclusion>? cases, int replayed, ImmutableArray<string> broken)
    {
        output.Write(symptoms.IsEmpty ? "No walk can have changed.\n" : "## Figures\n\n"
            + "| series | symptom | minutes | checks | repairs in vain | mended by the first repair, % | faults alike | how |\n|---|---|---|---|---|---|---|---|\n");
        foreach (ChangedSymptom symptom in symptoms) Row(output, symptom);
        foreach (ChangedSymptom symptom in symptoms) foreach (ChangedWalk walk in symptom.Walks) Walk(output, symptom, walk);
        if (cases is { } changed) Cases(output, changed, replayed);
        if (!broken.IsEmpty) output.Write($"\n## Floors broken\n\n{string.Concat(broken.Select(line => $"- {line}\n"))}");
    }

    private static void Row(TextWriter output, ChangedSymptom symptom)
    {
        WalkFigures? before = symptom.Before?.Walks, after = symptom.After?.Walks;
        string[] cells =
        [
            symptom.Series, symptom.Symptom, Pair(before?.Minutes, after?.Minutes, "0.0"), Pair(before?.Checks, after?.Checks, "0.0"),
            Pair(before?.RepairsInVain, after?.RepairsInVain, "0.00"),
            Pair(Percent(before), Percent(after), "0"),
            $"{Text(symptom.Before?.MeanGroup, "0.00")} → {Text(symptom.After?.MeanGroup, "0.00")}",
            before is { IsExact: true } && after is { IsExact: true } ? "exact" : "played",
        ];
        output.Write($"| {string.Join(" | ", cells)} |\n");
    }

    private static Estimate? Percent(WalkFigures? walks) => walks?.IsolatedTo[0] is { } share
        ? share with { Value = share.Value * 100, HalfWidth = share.HalfWidth * 100 }
        : null;

    // Half of a 95 % interval stands behind what was played.
    private static string Pair(Estimate? before, Estimate? after, string format)
    {
        string change = before is { } one && after is { } other
            ? $" ({(other.Value - one.Value).ToString("+" + format + ";−" + format + ";0", CultureInfo.InvariantCulture)})" : "";
        return $"{Text(before, format)} → {Text(after, format)}{change}";
    }

    private static string Text(Estimate? figure, string format) => figure is not { } value ? "–"
        : value.HalfWidth > 0 && double.IsFinite(value.HalfWidth) ? $"{Text(value.Value, format)} ± {Text(value.HalfWidth, format)}" : Text(value.Value, format);

    private static string Text(double? value, string format) => value?.ToString(format, CultureInfo.InvariantCulture) ?? "–";

    private static void Walk(TextWriter output, ChangedSymptom symptom, ChangedWalk walk)
    {
        output.Write($"\n### {symptom.Series}, {symptom.Symptom}: walk to {walk.Fault}\n\n| before | after |\n|---|---|\n");
        for (int place = 0; place < Math.Max(walk.Before.Length, walk.After.Length); place++)
            output.Write($"| {At(walk.Before, place)} | {At(walk.After, place)} |\n");
    }

    private static string At(ImmutableArray<string> steps, int place) => place < steps.Length ? steps[place] : "";

    private static void Cases(TextWriter output, ImmutableArray<ChangedConclusion> changed, int replayed)
    {
        output.Write($"\n## Stored cases\n\n{replayed} said again, {changed.Length} with another conclusion.\n");
        if (changed.IsEmpty) return;
        output.Write("\n| case | before | after | asked otherwise from message |\n|---|---|---|---|\n");
        foreach (ChangedConclusion one in changed)
            output.Write(string.Create(CultureInfo.InvariantCulture, $"| {one.Case} | {one.Before} | {one.After} | {(one.Turn == 0 ? "–" : one.Turn)} |\n"));
    }
}
