using System.Collections.Immutable;
using DxAssistant.Graph.Model;
using DxAssistant.Graph.Planning;
using DxAssistant.Graph.Planning.Baselines;

namespace DxAssistant.Graph.Tests.Planning.Fresh;

/// <summary>
/// Fresh random problems kept because a named simple policy loses on them by a margin; see
/// tests/Reference/sequencing.md.
/// </summary>
internal static class SearchedTraps
{
    // Draws tried for one problem; past them the seed has none.
    private const int MostDraws = 400;

    public static SequencingProblem? Isolate(int seed) => Search(seed, new InfoGainPerCost(), 1.15,
        draw => RandomKinds.Isolating(draw, draw.Faults(draw.Whole(5, 7)), draw.Whole(5, 8)));

    /// <summary>Two checks worth little alone and a lot together.</summary>
    public static SequencingProblem? Pair(int seed) => Search(seed, new InfoGainPerCost(), 1.15, draw =>
        RandomKinds.Repairing(draw, draw.Faults(draw.Whole(4, 5)), AccessStates.OnlyOne, draw.Whole(3, 5),
            perfect: 0.5));

    public static SequencingProblem? Eco(int seed) => Search(seed, new EcoMyopic(), 1.10, draw =>
    {
        bool open = draw.Happens(0.4);
        AccessStates access = open ? draw.Access(3, longest: 14, verified: true) : AccessStates.OnlyOne;
        return RandomKinds.Repairing(draw, draw.Faults(5), access, draw.Whole(5, open ? 5 : 7), perfect: 0.6);
    });

    public static SequencingProblem? Rollout(int seed) => Search(seed, new Rollout(), 1.03,
        draw => RandomKinds.Isolating(draw, draw.Faults(draw.Whole(5, 7)), draw.Whole(5, 8)));

    private static SequencingProblem? Search(
        int seed, IPolicy loses, double margin, Func<Draw, SequencingProblem> make)
    {
        for (int attempt = 0; attempt < MostDraws; attempt++)
        {
            SequencingProblem problem = make(new Draw(seed * MostDraws + attempt));
            double optimum = new ExactPlanner().Plan(problem, problem.Begin()).Minutes;
            double minutes = new PolicyEvaluator(problem, loses).Minutes(problem.Begin());
            if (minutes >= optimum * margin) return problem;
        }

        return null;
    }
}
