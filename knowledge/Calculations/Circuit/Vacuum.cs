using DxAssistant.Knowledge.Quantities;

namespace DxAssistant.Knowledge.Calculations.Circuit;

/// <summary>Evacuation and the standing vacuum test.</summary>
public static class Vacuum
{
    /// <summary>A standing vacuum at or below this passes, micron.</summary>
    public const double PassMicrons = 500;

    /// <summary>How long it has to stand, minutes.</summary>
    public const double StandMinutes = 10;

    public static readonly Citation Micron = new("Definition of the millitorr", "1 micron = 101,325/760,000 Pa");

    public static readonly Citation Test =
        Citation.CommonPractice with { Place = "isolate below 500 micron, wait 10 min, pass at or below 500" };

    /// <summary>Verdict of a standing vacuum test: <c>pass</c>, <c>fail</c>, or <c>indeterminate</c> when it did not
    /// stand long enough.</summary>
    public static string Decay(AbsolutePressure end, double minutes)
    {
        var microns = Units.MicronOfMercury.FromSi(end.Pascals);
        return !Side.IsInside(microns, 0, PassMicrons) ? "fail"
            : Side.IsInside(minutes, StandMinutes, double.PositiveInfinity) ? "pass" : "indeterminate";
    }
}
