namespace DxAssistant.Bot.Tests.Faults;

/// <summary>What several programs on one database kept.</summary>
/// <param name="HeardFirst">From the answer of one program until another told of the turn, before any harm.</param>
/// <param name="HeardAfter">The same after the last kill.</param>
internal sealed record ManyServersFigures(FaultFigures Faults, TimeSpan HeardFirst, TimeSpan HeardAfter)
{
    public string Heard => FormattableString.Invariant(
        $"A turn taken by one of the three was told by another {HeardFirst.TotalMilliseconds:0} ms after its answer, and {HeardAfter.TotalMilliseconds:0} ms after the last kill.");

    public override string ToString() => $"{Faults}. {Heard}";
}
