namespace DxAssistant.Graph.Model;

/// <summary>
/// Something wrong with the parts a graph was built from. Building goes on without the part at fault.
/// </summary>
public abstract record Finding
{
    private Finding() { }

    /// <summary>Two parts of one kind bear the same id; the first is kept.</summary>
    public sealed record IdTwice(Node Node) : Finding;

    /// <summary>A part refers to another that does not exist; the reference is left out.</summary>
    public sealed record UnknownReference(Node From, Node Missing) : Finding;

    /// <summary>Minutes, a weight or a probability outside its range; the part is left out.</summary>
    public sealed record NumberOutOfRange(Node Node, double Value) : Finding;

    /// <summary>
    /// A check's row is of the wrong length, has a value outside 0 to 1, or does not sum to 1; null is the row of
    /// every other fault.
    /// </summary>
    /// <remarks>A fault's row is left out; without its row of every other fault the whole check is.</remarks>
    public sealed record UnusableRow(CheckId Check, FaultId? Fault) : Finding;

    /// <summary>A check with fewer than two outcomes, or an outcome twice; the check is left out.</summary>
    public sealed record UnusableOutcomes(CheckId Check) : Finding;

    /// <summary>A check or repair that can be done in no access state; it is left out.</summary>
    public sealed record WithoutAccess(Node Node) : Finding;

    /// <summary>An access state that cannot be reached from the start.</summary>
    public sealed record Unreachable(AccessId Access) : Finding;

    /// <summary>Each outcome of the check is equally likely under all faults.</summary>
    public sealed record SeparatesNothing(CheckId Check) : Finding;

    /// <summary>No check gives the fault a row of its own that differs from another fault's.</summary>
    public sealed record SeenByNoCheck(FaultId Fault) : Finding;

    /// <summary>No repair cures the fault.</summary>
    public sealed record WithoutRepair(FaultId Fault) : Finding;

    /// <summary>The repair cures no fault.</summary>
    public sealed record CuresNothing(RepairId Repair) : Finding;

    /// <summary>No symptom lists the fault, so no conversation can arrive at it.</summary>
    public sealed record WithoutSymptom(FaultId Fault) : Finding;

    /// <summary>The symptom lists no fault.</summary>
    public sealed record WithoutCause(SymptomId Symptom) : Finding;
}
