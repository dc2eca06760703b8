using DxAssistant.Knowledge.Quantities;

namespace DxAssistant.Knowledge.Judging;

/// <summary>What a healthy unit shows, beside what was found.</summary>
/// <param name="Name">Of the reading or of the figure made from readings: <c>U-V</c>, <c>superheat</c>.</param>
/// <param name="Low">Lower end, included; null when there is none.</param>
/// <param name="Nominal">The value aimed at; null when only the band is known.</param>
/// <param name="High">Upper end, included; null when there is none.</param>
/// <param name="Found">What was read or made from readings; null when the reading was no number.</param>
/// <param name="StandardUncertainty">Of what was found, in its unit (a difference for temperatures), one standard
/// deviation.</param>
public sealed record ExpectedBand(
    string Name, Quantity? Low, Quantity? Nominal, Quantity? High, Quantity? Found, Quantity? StandardUncertainty);
