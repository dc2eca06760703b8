namespace DxAssistant.Knowledge.Readings;

/// <summary>What a measurement can give at all, faulty units included; far wider than what is expected of a healthy
/// one.</summary>
/// <param name="Least">In the SI base of the quantity asked; included.</param>
/// <param name="Most">In the SI base of the quantity asked; included.</param>
public sealed record PossibleRange(double Least, double Most)
{
    public bool Holds(double value) => value >= Least && value <= Most;
}
