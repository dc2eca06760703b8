using DxAssistant.Graph.Model;
using DxAssistant.Graph.Planning;

namespace DxAssistant.Knowledge.Pictures.Plans;

/// <summary>How well a check tells one fault of a symptom from the others.</summary>
internal static class Telltale
{
    /// <summary>
    /// An outcome expected under the fault makes the fault so many times likelier than any other: decisive.
    /// </summary>
    /// <remarks>Common practice, no source.</remarks>
    public const double Decisive = 5;

    /// <summary>Above this an outcome tells something.</summary>
    public const double Something = 1 + 1e-9;

    /// <summary>
    /// The check with the greatest strength; null when none tells anything. Of equals, the first by id.
    /// </summary>
    public static CheckId? Best(SequencingProblem problem, FaultId fault)
    {
        (CheckId? best, double most) = (null, Something);
        foreach (Check check in problem.Checks)
            if (Mean(problem, check, fault) is var strength && strength > most + 1e-9)
                (best, most) = (check.Id, strength);
        return best;
    }

    /// <summary>The greatest strength of any check against all other faults at once.</summary>
    public static double Strength(IEnumerable<Check> checks, IReadOnlyCollection<FaultId> among, FaultId fault) =>
        checks.Select(check => Enumerable.Range(0, check.Outcomes.Length)
            .Where(outcome => check.Row(fault)[outcome] >= 0.5)
            .Select(outcome => check.Row(fault)[outcome] / among.Where(other => other != fault)
                .Select(other => check.Row(other)[outcome]).DefaultIfEmpty(1e-6).Max()).DefaultIfEmpty(0).Max())
            .DefaultIfEmpty(0).Max();

    // Against the mean of all faults, weighed by how likely they are.
    private static double Mean(SequencingProblem problem, Check check, FaultId fault)
    {
        double all = problem.Faults.Sum(each => each.Weight), best = 0;
        for (int outcome = 0; outcome < check.Outcomes.Length; outcome++)
        {
            double under = check.Row(fault)[outcome];
            if (under < 0.5) continue;
            best = Math.Max(best, under * all / problem.Faults.Sum(each => each.Weight * check.Row(each.Id)[outcome]));
        }

        return best;
    }
}
