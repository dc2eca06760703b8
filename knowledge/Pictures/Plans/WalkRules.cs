using DxAssistant.Graph.Model;
using DxAssistant.Graph.Planning;
using DxAssistant.Graph.Planning.Trees;
using DxAssistant.Knowledge.Content;
using DxAssistant.Knowledge.Content.Model;
using DxAssistant.Knowledge.Walks;

namespace DxAssistant.Knowledge.Pictures.Plans;

/// <summary>The steps of a drawn walk: those of a conversation.</summary>
/// <remarks>
/// A printed walk knows no answers but its own, so what a conversation makes of doubts and of "cannot do that here" is
/// not in it.
/// </remarks>
/// <param name="work">The planner's work for the first step; steps that fewer walks come to get less.</param>
internal sealed class WalkRules(Library library, SequencingProblem problem, Situation situation, SymptomId symptom,
    int work)
{
    // Full work where a quarter of all walks come by, and never less than an eighth of it.
    private const double FullShare = 0.25, LeastWork = 0.125;

    private readonly double everything = problem.Begin().Weights.Sum();

    /// <summary>What is done at a position.</summary>
    public TreeStep Next(Position here) => TreeStep.Of(PolicyAt(here).Next(problem, here));

    /// <summary>The check that must come before a repair; null when the repair may be done.</summary>
    public CheckId? Proof(Position here, RepairId repair)
    {
        if (!library.Repairs.TryGetValue(repair, out RepairPage? page) || page.Parts.IsEmpty) return null;
        FaultId likeliest = problem.Repairs.First(each => each.Id == repair).Fixes
            .Where(fault => problem.Faults.Any(each => each.Id == fault))
            .MaxBy(fault => Math.Round(here.ProbabilityOf(fault), 9));
        return library.Faults[likeliest].Demanded.Select(id => (CheckId?)id)
            .FirstOrDefault(id => IsOpen(here, id!.Value));
    }

    private WalkPolicy PolicyAt(Position here) => new(library, situation, symptom,
        Math.Max(1, (int)(work * Math.Clamp(here.Weights.Sum() / everything / FullShare, LeastWork, 1))));

    // It can be done here, has not been, and tells faults apart that are left.
    private bool IsOpen(Position here, CheckId id) =>
        problem.Checks.FirstOrDefault(each => each.Id == id) is { } check && !here.IsUsed(id)
        && check.Separates([.. problem.Faults.Select(fault => fault.Id).Where(fault => here.ProbabilityOf(fault) > 0)]);
}
