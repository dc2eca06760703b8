using System.Collections.Immutable;
using DxAssistant.Graph.Model;

namespace DxAssistant.Graph.Planning;

/// <summary>
/// P(outcome | fault) of every check and fault of a graph in one array: made once, when the content is compiled, and cut
/// to a case by plain loops.
/// </summary>
internal sealed class LikelihoodTable
{
    private readonly int faults;
    private readonly int[] firstColumn;
    private readonly double[] columns;
    private readonly Dictionary<FaultId, int> faultPlaces;
    private readonly Dictionary<CheckId, int> checkPlaces;

    public LikelihoodTable(ImmutableArray<Check> checks, ImmutableArray<Fault> known)
    {
        faults = known.Length;
        faultPlaces = known.Select((fault, place) => (fault.Id, place)).ToDictionary();
        checkPlaces = checks.Select((check, place) => (check.Id, place)).ToDictionary();
        firstColumn = CheckTable.Offsets(checks.Select(check => check.Outcomes.Length));
        columns = new double[firstColumn[^1] * faults];
        for (int check = 0; check < checks.Length; check++) Enter(checks[check], check);
    }

    public int PlaceOf(FaultId fault) => faultPlaces[fault];

    public int PlaceOf(CheckId check) => checkPlaces[check];

    /// <summary>P(outcome | fault) for all faults of the graph.</summary>
    public ReadOnlySpan<double> Column(int check, int outcome) =>
        columns.AsSpan((firstColumn[check] + outcome) * faults, faults);

    /// <summary>True when two of these faults differ in the likelihood of an outcome.</summary>
    public bool Separates(int check, ReadOnlySpan<int> among)
    {
        for (int column = firstColumn[check] + 1; column < firstColumn[check + 1]; column++)
        {
            ReadOnlySpan<double> likelihoods = columns.AsSpan(column * faults, faults);
            foreach (int fault in among)
                if (Math.Abs(likelihoods[fault] - likelihoods[among[0]]) > SequencingProblem.Same) return true;
        }

        return false;
    }

    private void Enter(Check check, int place)
    {
        for (int fault = 0; fault < faults; fault++) Enter(place, fault, check.EveryOtherFault);
        foreach ((FaultId fault, ImmutableArray<double> row) in check.Likelihoods) Enter(place, faultPlaces[fault], row);
    }

    private void Enter(int check, int fault, ImmutableArray<double> row)
    {
        for (int outcome = 0; outcome < row.Length; outcome++)
            columns[(firstColumn[check] + outcome) * faults + fault] = row[outcome];
    }
}
