using System.Collections.Immutable;
using DxAssistant.Graph.Model;

namespace DxAssistant.Graph.Planning;

/// <summary>
/// P(outcome | fault) of every check of a graph, found by places instead of ids: made once, when the content is
/// compiled, and cut to a case by plain loops. Only rows of their own take room, so that it grows as the pages do.
/// </summary>
internal sealed class LikelihoodTable
{
    private readonly ImmutableArray<Check> checks;
    private readonly ImmutableArray<Fault> known;
    private readonly CheckRows[] rows;
    private readonly Dictionary<FaultId, int> faultPlaces;
    private readonly Dictionary<CheckId, int> checkPlaces;

    public LikelihoodTable(ImmutableArray<Check> checks, ImmutableArray<Fault> known)
    {
        (this.checks, this.known) = (checks, known);
        faultPlaces = known.Select((fault, place) => (fault.Id, place)).ToDictionary();
        checkPlaces = checks.Select((check, place) => (check.Id, place)).ToDictionary();
        rows = [.. checks.Select(check => new CheckRows(check, faultPlaces))];
    }

    private LikelihoodTable(LikelihoodTable before, ImmutableArray<Check> checks, ImmutableArray<Fault> known)
    {
        (this.checks, this.known, faultPlaces, checkPlaces) = (checks, known, before.faultPlaces, before.checkPlaces);
        rows = [.. checks.Select((check, place) => ReferenceEquals(check, before.checks[place])
            ? before.rows[place]
            : new CheckRows(check, faultPlaces))];
    }

    /// <summary>
    /// The rows of these checks, those of the same check kept; null when other checks or faults are known.
    /// </summary>
    public LikelihoodTable? Again(ImmutableArray<Check> now, ImmutableArray<Fault> faults)
    {
        if (now == checks && faults == known) return this;
        bool same = now.Select(check => check.Id).SequenceEqual(checks.Select(check => check.Id))
            && (faults == known || faults.Select(fault => fault.Id).SequenceEqual(known.Select(fault => fault.Id)));
        return same ? new LikelihoodTable(this, now, faults) : null;
    }

    public int PlaceOf(FaultId fault) => faultPlaces[fault];

    public int PlaceOf(CheckId check) => checkPlaces[check];

    /// <summary>P(outcome | fault) for all outcomes of a check.</summary>
    public ReadOnlySpan<double> Row(int check, int fault) => rows[check].Of(fault);

    /// <summary>True when two of these faults differ in the likelihood of an outcome.</summary>
    public bool Separates(int check, ReadOnlySpan<int> among)
    {
        if (among.IsEmpty) return false;
        ReadOnlySpan<double> first = rows[check].Of(among[0]);
        foreach (int fault in among)
        {
            ReadOnlySpan<double> row = rows[check].Of(fault);
            for (int outcome = 1; outcome < row.Length; outcome++)
                if (Math.Abs(row[outcome] - first[outcome]) > SequencingProblem.Same) return true;
        }

        return false;
    }
}
