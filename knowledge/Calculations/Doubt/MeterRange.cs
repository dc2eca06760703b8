using DxAssistant.Knowledge.Quantities;

namespace DxAssistant.Knowledge.Calculations.Doubt;

/// <summary>One range of a meter.</summary>
/// <param name="Most">The largest reading it shows, either side of zero.</param>
/// <param name="Promise">What its maker promises on it; without ranges of its own.</param>
public sealed record MeterRange(Quantity Most, MeterClass Promise)
{
    /// <summary>The largest reading in the SI base of the kind.</summary>
    internal double MostSi => Math.Abs(Most.Si);
}
