using System.Collections.Immutable;
using DxAssistant.Graph.Model;

namespace DxAssistant.Graph;

/// <summary>How well the best fault explains the outcomes seen, and which checks stand in the way.</summary>
internal sealed class OutcomeFit
{
    // An outcome that a fault shows less than a tenth as often as its usual one is seldom.
    private const double Seldom = 0.1;

    private readonly ImmutableArray<EvidenceColumn> outcomes;
    private readonly int faults;
    private readonly ContradictionFloor floor;

    public OutcomeFit(ImmutableArray<EvidenceColumn> columns, int faults, ContradictionFloor floor)
    {
        // By id, so that the product does not depend on the order of telling.
        outcomes =
        [
            .. columns.Where(column => column.Relative is not null)
                .OrderBy(column => column.SortKey, StringComparer.Ordinal),
        ];
        (this.faults, this.floor) = (faults, floor);
        Best = Enumerable.Range(0, faults).Select(fault => FitOf(fault, except: null)).DefaultIfEmpty(1).Max();
        Contradicted = Best < floor.Fit && !AnyExplains(except: null);
        Conflicts = Contradicted ? FindConflicts() : [];
    }

    /// <summary>0 to 1; 1 when each check showed what the best fault shows most often.</summary>
    public double Best { get; }

    /// <summary>True when no fault explains the outcomes.</summary>
    public bool Contradicted { get; }

    public ImmutableArray<CheckId> Conflicts { get; }

    // Sorted by a stable sort, from the order of ids: ties stay in it.
    private ImmutableArray<CheckId> FindConflicts()
    {
        ImmutableArray<EvidenceColumn> alone =
            [.. outcomes.Where(AnyExplains).OrderByDescending(Without)];
        if (alone.IsEmpty)
            alone = [.. outcomes.Where(column => column.Relative![BestFault()] < Seldom)
                .OrderBy(column => column.Relative![BestFault()])];
        return [.. alone.Select(column => ((Evidence.OutcomeSeen)column.Evidence).Check)];
    }

    private bool AnyExplains(EvidenceColumn? except) =>
        Enumerable.Range(0, faults).Any(fault => Explains(fault, except));

    private bool Explains(int fault, EvidenceColumn? except)
    {
        double fit = FitOf(fault, except);
        return fit >= floor.Fit
            || ChanceOfFit.AtMost(fit, outcomes.Where(column => column != except)
                .Select(column => column.Rows![fault])) >= floor.Chance;
    }

    private double Without(EvidenceColumn column) => Enumerable.Range(0, faults).Max(fault => FitOf(fault, column));

    // Compared with a slip for each impossible outcome, else all would be equally bad.
    private int BestFault() => Enumerable.Range(0, faults).MaxBy(fault =>
        outcomes.Aggregate(1.0, (fit, column) => fit * Math.Max(column.Relative![fault], Belief.Slip)));

    private double FitOf(int fault, EvidenceColumn? except)
    {
        double fit = 1;
        foreach (EvidenceColumn column in outcomes)
            if (column != except) fit *= column.Relative![fault];
        return fit;
    }
}
