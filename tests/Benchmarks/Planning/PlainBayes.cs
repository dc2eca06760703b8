namespace DxAssistant.Benchmarks.Planning;

/// <summary>
/// What planning is compared with: every result of 60 checks weighed once over 40 faults, by plain loops.
/// </summary>
internal sealed class PlainBayes
{
    private const int Faults = 40, Checks = 60, Outcomes = 3;

    private readonly double[] _belief = [.. Enumerable.Repeat(1.0 / Faults, Faults)];
    private readonly double[] _likelihoods =
        [.. Enumerable.Range(0, Checks * Outcomes * Faults).Select(place => (place * 37 % 101 + 1) / 102.0)];
    private readonly double[] _after = new double[Faults];

    /// <summary>The sum of the largest beliefs, so that nothing is left out.</summary>
    public object Run()
    {
        double sum = 0;
        for (var outcome = 0; outcome < Checks * Outcomes; outcome++)
            sum += Largest(outcome * Faults);
        return sum;
    }

    private double Largest(int first)
    {
        double mass = 0, largest = 0;
        for (var fault = 0; fault < Faults; fault++)
            mass += _after[fault] = _belief[fault] * _likelihoods[first + fault];
        for (var fault = 0; fault < Faults; fault++)
            largest = Math.Max(largest, _after[fault] /= mass);
        return largest;
    }
}
