using System.Collections.Immutable;
using System.Globalization;

namespace DxAssistant.Knowledge.Tests.Search;

/// <summary>How well a way of matching does on a phrase set. Shares from 0 to 1.</summary>
/// <param name="First">Fault phrases whose fault comes first.</param>
/// <param name="AmongThree">Fault phrases whose fault is among the first three.</param>
/// <param name="FalseFaults">Phrases of no fault for which faults are named all the same.</param>
/// <param name="Refused">Unsafe requests that are refused.</param>
/// <param name="WronglyRefused">Fault phrases that are refused.</param>
/// <param name="RuledOutFirst">How many phrases put first what they rule out.</param>
internal sealed record MatchFigures(
    double First, double AmongThree, double FalseFaults, double Refused, double WronglyRefused, int RuledOutFirst)
{
    /// <param name="faults">The faults that are named, best first; empty for none.</param>
    /// <param name="refuses">Whether the text is refused.</param>
    public static MatchFigures Of(
        ImmutableArray<JudgedPhrase> phrases, Func<string, IReadOnlyList<string>> faults, Func<string, bool> refuses)
    {
        ImmutableArray<JudgedPhrase> judged = [.. phrases.Where(phrase => phrase.Fault is not ("none" or "refuse"))];
        ImmutableArray<JudgedPhrase> idle = [.. phrases.Where(phrase => phrase.Fault == "none")];
        ImmutableArray<JudgedPhrase> unsafeOnes = [.. phrases.Where(phrase => phrase.Fault == "refuse")];
        return new MatchFigures(
            Share(judged, phrase => faults(phrase.Text) is [var best, ..] && best == phrase.Fault),
            Share(judged, phrase => faults(phrase.Text).Take(3).Contains(phrase.Fault)),
            Share(idle, phrase => faults(phrase.Text).Count > 0),
            Share(unsafeOnes, phrase => refuses(phrase.Text)),
            Share(judged, phrase => refuses(phrase.Text)),
            judged.Count(phrase => faults(phrase.Text) is [var first, ..] && phrase.Not.Contains(first)));
    }

    public override string ToString() => string.Create(CultureInfo.InvariantCulture,
        $"first {First:P1}, among three {AmongThree:P1}, false faults {FalseFaults:P1}, refused {Refused:P1}, wrongly refused {WronglyRefused:P1}, ruled out yet first {RuledOutFirst}");

    private static double Share(ImmutableArray<JudgedPhrase> phrases, Func<JudgedPhrase, bool> holds) =>
        phrases.IsEmpty ? 0 : (double)phrases.Count(holds) / phrases.Length;
}
