namespace DxAssistant.Bot.Tests.Faults;

/// <summary>How a program stood after a stretch of a long run.</summary>
/// <param name="At">Since the beginning.</param>
/// <param name="Turns">Turns answered in the stretch.</param>
/// <param name="Half">Milliseconds within which half of them were answered.</param>
/// <param name="P99">Milliseconds within which 99 of 100 were.</param>
/// <param name="Resident">Megabytes of memory in use, as the system counts them.</param>
/// <param name="Handles">Open files, connections among them.</param>
internal sealed record SoakSample(TimeSpan At, int Turns, double Half, double P99, double Resident, int Handles,
    int Threads)
{
    /// <summary>The means of several.</summary>
    public static SoakSample Mean(IReadOnlyList<SoakSample> all) => new(
        all[^1].At, (int)all.Average(one => one.Turns), all.Average(one => one.Half), all.Average(one => one.P99),
        all.Average(one => one.Resident),
        (int)Math.Round(all.Average(one => one.Handles)), (int)Math.Round(all.Average(one => one.Threads)));

    public override string ToString() => FormattableString.Invariant(
        $"{At.TotalMinutes:0.0} min: {Turns} turns, half within {Half:0.0} ms, 99 % within {P99:0.0} ms, {Resident:0} MB, {Handles} handles, {Threads} threads");
}
