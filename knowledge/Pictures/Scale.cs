namespace DxAssistant.Knowledge.Pictures;

/// <summary>From values to places on the paper, straight or by decades.</summary>
/// <param name="From">Value at <paramref name="Start"/>.</param>
/// <param name="To">Value at <paramref name="End"/>; unlike <paramref name="From"/>.</param>
/// <param name="Start">Place of the one end.</param>
/// <param name="End">Place of the other.</param>
/// <param name="ByDecades">Whether each tenfold takes the same room; both values are then above 0.</param>
internal sealed record Scale(double From, double To, double Start, double End, bool ByDecades = false)
{
    /// <summary>Where a value stands; one off the scale stands at its end.</summary>
    public double At(double value)
    {
        double share = ByDecades
            ? (Math.Log10(Math.Max(value, double.Epsilon)) - Math.Log10(From)) / (Math.Log10(To) - Math.Log10(From))
            : (value - From) / (To - From);
        return Start + Math.Clamp(double.IsNaN(share) ? 0 : share, 0, 1) * (End - Start);
    }

    public bool Holds(double value) => value >= Math.Min(From, To) && value <= Math.Max(From, To);

    /// <summary>Round values on the scale, lowest first, at most about <paramref name="count"/>.</summary>
    public IReadOnlyList<double> Ticks(int count) => ByDecades ? Decades(count) : Even(count);

    private List<double> Even(int count)
    {
        double step = Step((To - From) / Math.Max(1, count));
        var ticks = new List<double>();
        for (double k = Math.Ceiling(From / step - 1e-9); k * step <= To + 1e-9 * step; k++) ticks.Add(k * step);
        return ticks;
    }

    // 1, 2 and 5 of each decade where there is room for them, else 1 alone, else every second or third decade.
    private List<double> Decades(int count)
    {
        int[][] choices = [[1, 2, 5], [1, 3], [1]];
        int low = (int)Math.Floor(Math.Log10(From)), high = (int)Math.Ceiling(Math.Log10(To));
        var ticks = new List<double>();
        foreach (int[] digits in choices)
        {
            ticks = [.. Enumerable.Range(low, high - low + 1)
                .SelectMany(decade => digits.Select(digit => digit * Math.Pow(10, decade))).Where(Holds)];
            if (ticks.Count <= count) break;
        }

        int every = (ticks.Count + count - 1) / count;
        return [.. ticks.Where((_, place) => place % Math.Max(1, every) == 0)];
    }

    private static double Step(double rough)
    {
        double decade = Math.Pow(10, Math.Floor(Math.Log10(rough)));
        double share = rough / decade;
        return decade * (share <= 1 ? 1 : share <= 2 ? 2 : share <= 5 ? 5 : 10);
    }
}
