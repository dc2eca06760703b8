using System.Globalization;
using DxAssistant.Graph.Testability;

namespace DxAssistant.Server.Workbench.Comparing;

/// <summary>What an edit may not make worse; null where nothing is asked.</summary>
/// <param name="Minutes">Most minutes that a symptom's walks may take longer, as a mean.</param>
/// <param name="InVain">Most repairs in vain that a walk may have more, as a mean.</param>
/// <param name="Isolated">Most points of a hundred by which the share mended by the first repair may fall.</param>
/// <param name="Conclusions">Most stored cases that may come to another conclusion.</param>
internal sealed record Floors(double? Minutes, double? InVain, double? Isolated, int? Conclusions)
{
    /// <summary>What a symptom breaks, in words; a symptom that is gone breaks nothing.</summary>
    public IEnumerable<string> BrokenBy(ChangedSymptom symptom)
    {
        if (symptom.Before?.Walks is not { } before || symptom.After is not { } figures) yield break;
        string where = $"{symptom.Series}, {symptom.Symptom}";
        if (figures.Walks is not { } after)
        {
            if ((Minutes ?? InVain ?? Isolated) is not null) yield return $"{where}: nothing can be walked any more";
            yield break;
        }

        if (Rise(before.Minutes, after.Minutes) > Minutes) yield return $"{where}: {Text(Rise(before.Minutes, after.Minutes))} minutes longer";
        if (Rise(before.RepairsInVain, after.RepairsInVain) > InVain)
            yield return $"{where}: {Text(Rise(before.RepairsInVain, after.RepairsInVain))} more repairs in vain a walk";
        double fall = -100 * Rise(before.IsolatedTo[0], after.IsolatedTo[0]);
        if (fall > Isolated) yield return $"{where}: mended by the first repair {Text(fall)} points less often";
    }

    private static double Rise(Estimate before, Estimate after) => Math.Round(after.Value - before.Value, 6);

    private static string Text(double value) => value.ToString("0.00", CultureInfo.InvariantCulture);
}
