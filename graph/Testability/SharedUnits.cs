using DxAssistant.Graph.Model;
using DxAssistant.Graph.Planning;

namespace DxAssistant.Graph.Testability;

/// <summary>Draws units for two problems, with one fault in both as often as their priors allow.</summary>
/// <remarks>
/// The largest coupling of two distributions: what they share is drawn once, the rest of each by itself. Each side is
/// drawn as if it stood alone.
/// </remarks>
internal sealed class SharedUnits
{
    private readonly FaultId[] faults;
    private readonly double[] both, onlyBefore, onlyAfter;
    private readonly double shared;

    public SharedUnits(SequencingProblem before, SequencingProblem after)
    {
        faults = [.. before.Faults.Concat(after.Faults).Select(fault => fault.Id).Distinct().Order()];
        double[] first = Shares(before), second = Shares(after);
        both = [.. first.Zip(second, Math.Min)];
        onlyBefore = [.. first.Zip(both, Rest)];
        onlyAfter = [.. second.Zip(both, Rest)];
        // What rounding leaves apart is no difference.
        shared = Math.Max(onlyBefore.Sum(), onlyAfter.Sum()) < 1e-9 ? 1 : both.Sum();
    }

    /// <summary>The fault of the next unit, as either side has it.</summary>
    public (FaultId Before, FaultId After) Next(Draws draws)
    {
        if (draws.NextShare() >= shared)
            return (faults[draws.NextPlace(onlyBefore)], faults[draws.NextPlace(onlyAfter)]);
        FaultId fault = faults[draws.NextPlace(both)];
        return (fault, fault);
    }

    private double[] Shares(SequencingProblem problem)
    {
        double all = problem.Faults.Sum(fault => fault.Weight);
        Dictionary<FaultId, double> shares =
            problem.Faults.ToDictionary(fault => fault.Id, fault => fault.Weight / all);
        return [.. faults.Select(fault => shares.GetValueOrDefault(fault))];
    }

    private static double Rest(double all, double taken) => Math.Max(0, all - taken);
}
