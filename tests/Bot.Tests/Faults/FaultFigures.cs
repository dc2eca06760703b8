namespace DxAssistant.Bot.Tests.Faults;

/// <summary>What was promised and kept while harm was done.</summary>
/// <param name="Faults">How often harm was done.</param>
/// <param name="Acknowledged">Turns that were answered: each was found, once and whole.</param>
/// <param name="Claims">Claims that were answered: each was found, its hashes valid.</param>
/// <param name="Kept">Turns found at the end, those included that were saved and not answered.</param>
/// <param name="Again">How often a turn had to be sent again.</param>
/// <param name="LongestWait">The longest that one turn took until it was answered.</param>
internal sealed record FaultFigures(int Faults, int Acknowledged, int Claims, int Kept, int Again, TimeSpan LongestWait)
{
    public static FaultFigures None { get; } = new(0, 0, 0, 0, 0, TimeSpan.Zero);

    public static FaultFigures Of(int faults, Talkers talkers, int kept) =>
        new(faults, talkers.Acknowledged.Count, talkers.Claims.Count, kept, talkers.Again, talkers.LongestWait);

    /// <summary>Both together.</summary>
    public FaultFigures And(FaultFigures further) => new(
        Faults + further.Faults, Acknowledged + further.Acknowledged, Claims + further.Claims, Kept
            + further.Kept, Again + further.Again,
        LongestWait > further.LongestWait ? LongestWait : further.LongestWait);

    public override string ToString() => FormattableString.Invariant(
        $"{Faults} times: {Acknowledged} turns and {Claims} claims acknowledged, {Kept} turns kept with openings, {Again} sent again, longest wait {LongestWait.TotalSeconds:0.0} s");
}
