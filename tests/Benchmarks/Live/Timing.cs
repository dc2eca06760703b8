namespace DxAssistant.Benchmarks.Live;

/// <summary>One run: what it took, and what held it up.</summary>
internal readonly record struct Timing(double Milliseconds, Held Held)
{
    /// <param name="work">Gives how many milliseconds it took.</param>
    public static Timing Of(Func<double> work)
    {
        Held before = Held.Now();
        double milliseconds = work();
        return new Timing(milliseconds, Held.Now() - before);
    }

    public override string ToString() =>
        FormattableString.Invariant($"{Milliseconds:0} / {Held.Waited:0} / {Held.Paused:0}");
}
