using System.Collections.Immutable;
using DxAssistant.Graph.Model;

namespace DxAssistant.Graph.Planning;

/// <summary>The checks of a problem in flat arrays.</summary>
internal sealed class CheckTable
{
    private readonly int faults;
    private readonly int[] firstColumn;
    private readonly double[] columns;
    private readonly int[] firstAccess;
    private readonly int[] access;
    private readonly int[] left;
    private readonly double[] prices;
    private readonly int[] cheapestAccess;

    /// <param name="known">The rows of the graph that the problem is cut from; null when there is none.</param>
    public CheckTable(SequencingProblem problem, LikelihoodTable? known)
    {
        faults = problem.Faults.Length;
        Count = problem.Checks.Length;
        Minutes = [.. problem.Checks.Select(check => check.Minutes)];
        firstColumn = Offsets(problem.Checks.Select(check => check.Outcomes.Length));
        columns = new double[firstColumn[Count] * faults];
        firstAccess = Offsets(problem.Checks.Select(check => check.Access.Length));
        access = [.. problem.Checks.SelectMany(check => check.Access).Select(problem.Access.IndexOf)];
        left = [.. problem.Checks.Select(check => check.Leaves is { } state ? problem.Access.IndexOf(state) : -1)];
        MinutesBesideWays = [.. Minutes.Select((minutes, check) => minutes - LongestWayMade(problem, check))];
        prices = new double[problem.StateCount * Count];
        cheapestAccess = new int[problem.StateCount * Count];
        if (known is null) EnterColumns(problem);
        else CutColumns(problem, known);
        for (int state = 0; state < problem.StateCount; state++)
            for (int check = 0; check < Count; check++) EnterPrice(problem, state, check);
        MostOutcomes = problem.Checks.Select(check => check.Outcomes.Length).DefaultIfEmpty(2).Max();
    }

    public int Count { get; }

    /// <summary>Of the check itself, without getting there.</summary>
    public double[] Minutes { get; }

    /// <summary>
    /// Of the check itself, less the way to the state in which it leaves the unit: so no plan saves a way by a check,
    /// and what a plan at least takes can be reckoned from ways and checks.
    /// </summary>
    public double[] MinutesBesideWays { get; }

    public int MostOutcomes { get; }

    public int Outcomes(int check) => firstColumn[check + 1] - firstColumn[check];

    /// <summary>P(outcome | fault) for all faults.</summary>
    public ReadOnlySpan<double> Column(int check, int outcome) =>
        columns.AsSpan((firstColumn[check] + outcome) * faults, faults);

    /// <summary>The states in which the check may be done, in the order listed.</summary>
    public ReadOnlySpan<int> Access(int check) => access.AsSpan(firstAccess[check]..firstAccess[check + 1]);

    /// <summary>Where the unit stands after the check was done in a state.</summary>
    public int StateAfter(int check, int done) => left[check] < 0 ? done : left[check];

    /// <summary>Minutes of the check from a state, getting to its cheapest access state included.</summary>
    public double Price(int state, int check) => prices[state * Count + check];

    /// <summary>The access state behind <see cref="Price"/>; the first listed on a tie.</summary>
    public int CheapestAccess(int state, int check) => cheapestAccess[state * Count + check];

    /// <summary>True when two faults with a weight above 0 differ in their likelihoods.</summary>
    public bool Separates(int check, ReadOnlySpan<double> weights)
    {
        int first = 0;
        while (first < weights.Length && weights[first] <= 0) first++;
        for (int outcome = Outcomes(check) - 1; outcome > 0; outcome--)
        {
            ReadOnlySpan<double> column = Column(check, outcome);
            for (int fault = first + 1; fault < weights.Length; fault++)
                if (weights[fault] > 0 && Math.Abs(column[fault] - column[first]) > SequencingProblem.Same) return true;
        }

        return false;
    }

    /// <summary>True when no outcome is possible under both faults.</summary>
    public bool NeverAgree(int check, int left, int right)
    {
        for (int outcome = 0; outcome < Outcomes(check); outcome++)
            if (Column(check, outcome)[left] > 0 && Column(check, outcome)[right] > 0) return false;
        return true;
    }

    /// <summary>P(outcome) times the sum of the weights.</summary>
    public double Probability(int check, int outcome, ReadOnlySpan<double> weights) =>
        Lanes.Dot(weights, Column(check, outcome));

    /// <summary>The weights after an outcome, normalised.</summary>
    /// <returns>P(outcome) when the weights sum to 1; when it is 0, <paramref name="after"/> means nothing.</returns>
    public double Update(int check, int outcome, ReadOnlySpan<double> weights, Span<double> after)
    {
        double probability = Lanes.Multiply(weights, Column(check, outcome), after);
        if (!(probability > 0)) return 0;
        Lanes.Divide(after, probability);
        return probability;
    }

    internal static int[] Offsets(IEnumerable<int> lengths)
    {
        List<int> offsets = [0];
        foreach (int length in lengths) offsets.Add(offsets[^1] + length);
        return [.. offsets];
    }

    private void CutColumns(SequencingProblem problem, LikelihoodTable known)
    {
        int[] places = [.. problem.Faults.Select(fault => known.PlaceOf(fault.Id))];
        for (int check = 0; check < Count; check++)
        {
            int place = known.PlaceOf(problem.Checks[check].Id);
            for (int fault = 0; fault < faults; fault++)
            {
                ReadOnlySpan<double> row = known.Row(place, places[fault]);
                for (int outcome = 0; outcome < row.Length; outcome++)
                    columns[(firstColumn[check] + outcome) * faults + fault] = row[outcome];
            }
        }
    }

    private void EnterColumns(SequencingProblem problem)
    {
        Dictionary<FaultId, int> places = problem.Faults.Select((fault, place) => (fault.Id, place)).ToDictionary();
        for (int check = 0; check < Count; check++) EnterColumns(problem, check, places);
    }

    private void EnterColumns(SequencingProblem problem, int check, Dictionary<FaultId, int> places)
    {
        for (int fault = 0; fault < faults; fault++) EnterRow(check, fault, problem.Checks[check].EveryOtherFault);
        foreach ((FaultId fault, ImmutableArray<double> row) in problem.Checks[check].Likelihoods)
            if (places.TryGetValue(fault, out int place)) EnterRow(check, place, row);
    }

    private void EnterRow(int check, int fault, ImmutableArray<double> row)
    {
        for (int outcome = 0; outcome < row.Length; outcome++)
            columns[(firstColumn[check] + outcome) * faults + fault] = row[outcome];
    }

    private double LongestWayMade(SequencingProblem problem, int check)
    {
        double longest = 0;
        foreach (int done in Access(check))
            longest = Math.Max(longest, problem.Travel[done * problem.StateCount + StateAfter(check, done)]);
        return longest;
    }

    private void EnterPrice(SequencingProblem problem, int state, int check)
    {
        (double price, int cheapest) = (double.PositiveInfinity, access[firstAccess[check]]);
        foreach (int there in Access(check))
        {
            double through = problem.Travel[state * problem.StateCount + there] + Minutes[check];
            if (through < price - SequencingProblem.Same) (price, cheapest) = (through, there);
        }

        prices[state * Count + check] = price;
        cheapestAccess[state * Count + check] = cheapest;
    }
}
