namespace DxAssistant.Bot.Tests.Faults;

/// <summary>What copies of the files held.</summary>
/// <param name="Whole">What was promised; kept over all copies.</param>
/// <param name="Torn">Turns over all copies whose journal ended or went wrong at a random place.</param>
internal sealed record LostPowerFigures(FaultFigures Whole, int Torn)
{
    /// <summary>Both together.</summary>
    public LostPowerFigures And(LostPowerFigures further) => new(Whole.And(further.Whole), Torn + further.Torn);

    public override string ToString() =>
        FormattableString.Invariant($"{Whole}; over all copies, {Torn} with a torn end");
}
