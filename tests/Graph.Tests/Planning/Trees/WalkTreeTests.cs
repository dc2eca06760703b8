using DxAssistant.Graph.Planning;
using DxAssistant.Graph.Planning.Trees;

namespace DxAssistant.Graph.Tests.Planning.Trees;

public sealed class WalkTreeTests
{
    private static readonly LivePlanner Planner = new();

    [Fact]
    public void Grow_RoomForEverything_CutsNothingAndCostsWhatThePolicyDoes()
    {
        for (int seed = 1; seed <= 10; seed++)
        {
            SequencingProblem problem = new RandomProblems(seed).Repairing(4, 3, 2, 1);
            WalkNode tree = Grow(problem, 10_000);
            Assert.Equal(0, tree.CutShare, 1e-12);
            Assert.Equal(new PolicyEvaluator(problem, Planner).Minutes(problem.Begin()), Minutes(problem, tree), 1e-9);
        }
    }

    [Fact]
    public void Trimmed_SmallerTree_IsTheOneThatGrewSoFar()
    {
        SequencingProblem problem = new RandomProblems(3).Repairing(6, 5, 2, 0.5);
        WalkNode large = Grow(problem, 40);
        for (int steps = 0; steps <= 40; steps += 5)
            Assert.Equal(Text(Grow(problem, steps)), Text(large.Trimmed(steps)));
    }

    [Fact]
    public void Kept_SomeSteps_AreThoseWhosePredecessorsAllStay()
    {
        WalkNode large = Grow(new RandomProblems(3).Repairing(6, 5, 2, 0.5), 20);
        Assert.Equal(Text(large.Trimmed(7)), Text(large.Kept(Enumerable.Range(0, 7).ToHashSet())));
        Assert.Equal(0, large.Kept(new HashSet<int> { 1, 2, 3 }).Steps);
    }

    [Fact]
    public void Grow_AnySize_KeepsTheLikeliestPlaces()
    {
        WalkNode tree = Grow(new RandomProblems(5).Repairing(6, 5, 2, 0.5), 12);
        double leastWritten = Nodes(tree).Where(node => node.Step is not null).Min(node => node.Share);
        Assert.All(Nodes(tree).Where(node => node.Step is null),
            node => Assert.True(node.Share <= leastWritten + 1e-9));
    }

    [Fact]
    public void Grow_AnySize_SharesOfBranchesAddUp()
    {
        foreach (WalkNode node in Nodes(Grow(new RandomProblems(7).Repairing(6, 5, 2, 0.3), 30)))
            if (node.Step is PlannedStep.DoCheck)
                Assert.Equal(node.Share, node.Branches.Sum(branch => branch.Next.Share), 1e-9);
    }

    private static WalkNode Grow(SequencingProblem problem, int steps) =>
        new WalkTree(problem, (here, _) => TreeStep.Of(Planner.Next(problem, here))).Grow(steps);

    private static IEnumerable<WalkNode> Nodes(WalkNode node) =>
        node.Branches.SelectMany(branch => Nodes(branch.Next)).Prepend(node);

    private static string Text(WalkNode node) =>
        $"{node.Step?.Name()} {node.Share:R} ({string.Join(", ", node.Branches.Select(branch => $"{branch.Outcome}: {Text(branch.Next)}"))})";

    // Minutes of the steps written down, each as often as it is come to.
    private static double Minutes(SequencingProblem problem, WalkNode node) => node.Share * (node.Step switch
    {
        PlannedStep.DoCheck step => problem.Access.Minutes(node.From, step.Access)
            + problem.Checks.First(check => check.Id == step.Check).Minutes,
        PlannedStep.DoRepair step => Minutes(problem, node, step),
        _ => 0,
    }) + node.Branches.Sum(branch => Minutes(problem, branch.Next));

    private static double Minutes(SequencingProblem problem, WalkNode node, PlannedStep.DoRepair step)
    {
        Graph.Model.Repair repair = problem.Repairs.First(each => each.Id == step.Repair);
        return problem.Access.Minutes(node.From, step.Access) + repair.Minutes + repair.VerifyMinutes
            + problem.Access.Minutes(step.Access, problem.Access.Verify ?? step.Access);
    }
}
