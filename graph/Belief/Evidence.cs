using System.Collections.Immutable;
using DxAssistant.Graph.Model;

namespace DxAssistant.Graph;

/// <summary>One thing learnt in a case.</summary>
public abstract record Evidence
{
    private Evidence() { }

    /// <summary>The unit shows, or the customer reports, a symptom.</summary>
    /// <param name="Confidence">
    /// How sure it is that this symptom was meant; above 0, at most 1. At 1 the report counts in full.
    /// </param>
    public sealed record SymptomReported(SymptomId Symptom, double Confidence = 1) : Evidence;

    /// <summary>A check was done.</summary>
    /// <param name="Weights">
    /// How likely each outcome of the check is to be the true one, in the check's order; 0 or more, at least one
    /// above 0. A hard answer is a 1 among zeros; a reading near a limit shares its weight.
    /// </param>
    public sealed record OutcomeSeen(CheckId Check, ImmutableArray<double> Weights) : Evidence;

    /// <summary>
    /// A repair was done and the unit still does not work: what it cures is not the fault, if the work held.
    /// </summary>
    /// <param name="NotHeld">
    /// How likely such work does not cure the fault that it is for, 0 to 1; at 0 what it cures is ruled out.
    /// </param>
    public sealed record RepairFailed(RepairId Repair, double NotHeld = 0) : Evidence;

    /// <summary>
    /// A repair put its fault right, and another fault shows beside it: what is left is none that it cures, if the work
    /// held.
    /// </summary>
    /// <param name="NotHeld">
    /// How likely such work does not cure the fault that it is for, 0 to 1; at 0 what it cures is out of the question.
    /// </param>
    public sealed record FaultMended(RepairId Repair, double NotHeld = 0) : Evidence;

    /// <summary>A repair was done and the unit works: the fault is one of those it cures.</summary>
    public sealed record RepairWorked(RepairId Repair) : Evidence;

    /// <summary>A repair was made on the same unit some time ago.</summary>
    /// <param name="Odds">Times the odds of faults, above 0; those not named stay as they are.</param>
    public sealed record RepairedEarlier(RepairId Repair, ImmutableSortedDictionary<FaultId, double> Odds) : Evidence;

    /// <summary>A check whose outcome is plain.</summary>
    /// <exception cref="ArgumentException">The check has no such outcome.</exception>
    public static OutcomeSeen Seen(Check check, OutcomeId outcome)
    {
        int place = check.IndexOf(outcome);
        if (place < 0) throw new ArgumentException($"{check.Id} has no outcome {outcome}", nameof(outcome));
        double[] weights = new double[check.Outcomes.Length];
        weights[place] = 1;
        return new OutcomeSeen(check.Id, [.. weights]);
    }
}
