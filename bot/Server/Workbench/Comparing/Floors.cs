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
    /// <summary>
    /// What a symptom breaks; one that could be walked and is gone, or can be walked no more, breaks any floor.
    /// </summary>
    public IEnumerable<BrokenFloor> BrokenBy(ChangedSymptom symptom)
    {
        if (symptom.Before?.Walks is not { } before) return [];
        string where = $"{symptom.Series}, {symptom.Symptom}: ";
        if (symptom.After?.Walks is not { } after)
            return (Minutes ?? InVain ?? Isolated) is null
                ? []
                : [new BrokenFloor(where + (symptom.After is null ? "gone" : "nothing can be walked any more"))];
        BrokenFloor?[] broken =
        [
            Broken(Minutes, symptom.Played?.Minutes
                ?? Rise(before.Minutes, after.Minutes), 1, rise => $"{where}{rise} minutes longer"),
            Broken(InVain, symptom.Played?.RepairsInVain ?? Rise(before.RepairsInVain, after.RepairsInVain), 1,
                rise => $"{where}{rise} more repairs in vain a walk"),
            Broken(Isolated, symptom.Played?.MendedFirst ?? Rise(before.IsolatedTo[0], after.IsolatedTo[0]), -100,
                fall => $"{where}mended by the first repair {fall} points less often"),
        ];
        return broken.OfType<BrokenFloor>();
    }

    private static Estimate Rise(Estimate before, Estimate after) => Estimate.Exactly(after.Value - before.Value);

    // Played on the same units, so the half width is that of the differences: chance that strikes both sides is not in
    // it.
    private static BrokenFloor? Broken(double? floor, Estimate rise, double scale, Func<string, string> say)
    {
        double worse = Math.Round(scale * rise.Value, 6);
        return worse > floor
            ? new BrokenFloor(say(worse.ToString("0.00", CultureInfo.InvariantCulture)),
                worse <= Math.Abs(scale) * rise.HalfWidth)
            : null;
    }
}
