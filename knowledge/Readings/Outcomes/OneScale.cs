using System.Collections.Immutable;
using DxAssistant.Knowledge.Quantities;
using DxAssistant.Knowledge.Readings.Mentions;

namespace DxAssistant.Knowledge.Readings.Outcomes;

/// <summary>Takes the temperatures of one message on one scale, unless each says its own: "75 and 57" are read off one
/// thermometer.</summary>
/// <param name="judge">Lists what a mention can mean on its line.</param>
internal sealed class OneScale(Func<Mention, Judged> judge)
{
    /// <summary>The same, with the scale on which all can be; with both where all can be on either.</summary>
    public List<Judged> Settle(List<Judged> judged)
    {
        List<Judged> degrees = judged.FindAll(IsOfDegrees);
        ImmutableArray<Unit> said = [.. degrees.Where(SaysScale).Select(one => one.Mention.Units[0]).Distinct()];
        if (degrees.Count < 2 || said.Length > 1 || degrees.TrueForAll(SaysScale))
        {
            return judged;
        }

        List<Judged> open = degrees.FindAll(one => !SaysScale(one));
        Unit usual = open[0].Mention.Units[0];
        ImmutableArray<Unit> able =
        [
            .. (said.IsEmpty ? Temperatures.Scales.OrderBy(unit => unit != usual).ToImmutableArray() : said)
                .Where(unit => open.TrueForAll(one => judge(On(one, [unit])).Reason != ReadingReason.Impossible)),
        ];
        bool settled = able.Length > 1 && open.TrueForAll(one => one.IsPlain && one.Mention.Units[0] == usual);
        return settled ? judged : judged.ConvertAll(one => !open.Contains(one) ? one
            : able.IsEmpty ? one with { Meanings = [], Reason = ReadingReason.Impossible }
            : judge(On(one, able)));
    }

    private static Mention On(Judged one, ImmutableArray<Unit> scales) => one.Mention with { Units = scales };

    private static bool SaysScale(Judged one) => one.Mention.SaysScale;

    private static bool IsOfDegrees(Judged one) =>
        one.Mention is { State: ReadingState.Number, Doubt: Doubt.None, IsLoose: false, Units.IsEmpty: false }
        && one.Mention.Units.All(unit => unit.Kind == QuantityKind.Temperature);
}
