namespace DxAssistant.Bot.Tests.Fuzzing;

/// <summary>What came of feeding a part.</summary>
/// <param name="Inputs">How many were tried; none did what it should not have.</param>
/// <param name="Behaviours">How many ways of behaving were seen.</param>
/// <param name="Longest">Characters of the longest input.</param>
/// <param name="Slowest">Milliseconds that the slowest input took, waits for a processor included.</param>
internal sealed record FuzzFigures(string Name, int Seed, long Inputs, int Behaviours, int Longest, double Slowest,
    TimeSpan Took)
{
    public override string ToString() =>
        FormattableString.Invariant(
            $"{Name}: seed {Seed}, {Inputs} inputs up to {Longest} characters, {Behaviours} behaviours, slowest {Slowest:0} ms, {Took.TotalSeconds:0} s");
}
