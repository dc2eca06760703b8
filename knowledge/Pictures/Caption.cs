using DxAssistant.Knowledge.Judging;

namespace DxAssistant.Knowledge.Pictures;

/// <summary>The words of a picture of a verdict.</summary>
internal sealed record Caption(VerdictFacts Facts, IPictureWords Words)
{
    /// <summary>Where what was found lies against its band.</summary>
    public string Side => Words.Say("picture-side-" + Facts.Judgement.Verdict switch
    {
        VerdictKind.Within or VerdictKind.Closed => "within",
        VerdictKind.Low or VerdictKind.Absent or VerdictKind.Reversed => "low",
        VerdictKind.High => "high",
        VerdictKind.OpenCircuit => "open-circuit",
        VerdictKind.ShortCircuit => "short-circuit",
        _ => "too-close",
    });

    /// <summary>The line of the key for a band.</summary>
    public (Sign, string) Expected(ExpectedBand band) =>
        (Sign.Band, Words.Say("picture-key-expected", ("band", Figures.Limits(band))));

    /// <summary>The line of the key for how far a figure may be off; none when that is not known.</summary>
    public IEnumerable<(Sign, string)> Doubt(ExpectedBand band) =>
        band is { Found: not null, StandardUncertainty: { Value: > 0 } u }
        ? [(Sign.Doubt, Words.Say("picture-key-doubt", ("doubt", Figures.OfDoubt(u))))]
        : [];

    /// <summary>The line of the key for the odd one of a set; none when none is odd.</summary>
    public IEnumerable<(Sign, string)> Odd => Facts.Judgement.OddOneOut is { } odd
        ? [(Sign.Odd, Words.Say("picture-key-odd", ("odd", odd)))]
        : [];

    /// <summary>The picture under its title, with its text.</summary>
    public Drawn Finish(Pen pen, string kind, string phrase, params ReadOnlySpan<(string Slot, string Text)> slots)
    {
        string text = Words.Say(phrase, slots);
        return new Drawn(kind, pen.Finish(kind, Facts.What, text), phrase, text);
    }
}
