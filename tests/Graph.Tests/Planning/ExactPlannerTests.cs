using DxAssistant.Graph.Planning;

namespace DxAssistant.Graph.Tests.Planning;

public sealed class ExactPlannerTests
{
    // Source: tests/Reference/sequencing.json, values of an independent solver; 1e-9 is the tolerance that file asks
    // for.
    private const double Tolerance = 1e-9;

    public static TheoryData<string> All => SequencingFile.Ids();

    [Fact]
    public void Instances_OfTheFile_AreAllThere() => Assert.Equal(122, SequencingFile.Instances.Length);

    [Theory]
    [MemberData(nameof(All))]
    public void Plan_ReferenceInstance_HasTheOptimalCost(string id)
    {
        SequencingInstance instance = SequencingFile.Instance(id);
        Plan plan = new ExactPlanner().Plan(instance.Problem, instance.Problem.Begin());
        Assert.True(plan.IsExact);
        Assert.Equal(instance.ExpectedCost, plan.Minutes, Tolerance);
        Assert.Equal(instance.ExpectedCost, plan.LowerBound, Tolerance);
    }

    [Theory]
    [MemberData(nameof(All))]
    public void Plan_ReferenceInstance_BeginsWithAnOptimalAction(string id)
    {
        SequencingInstance instance = SequencingFile.Instance(id);
        Assert.Contains(new ExactPlanner().Next(instance.Problem, instance.Problem.Begin())
            .Name(), instance.TiedFirstActions);
    }

    [Theory]
    [MemberData(nameof(All))]
    public void Plan_ReferenceInstance_ValuesEveryFirstAction(string id)
    {
        SequencingInstance instance = SequencingFile.Instance(id);
        Plan plan = new ExactPlanner().Plan(instance.Problem, instance.Problem.Begin());
        Assert.Equal(instance.FirstActionValues.Count, plan.Options.Length);
        foreach (PlanOption option in plan.Options)
            Assert.Equal(instance.FirstActionValues[option.Step.Name()], option.Minutes, Tolerance);
    }

    [Theory]
    [MemberData(nameof(All))]
    public void Plan_FollowedToTheEnd_CostsWhatItPromises(string id)
    {
        SequencingInstance instance = SequencingFile.Instance(id);
        PolicyEvaluator evaluator = new(instance.Problem, new ExactPlanner());
        Assert.Equal(instance.ExpectedCost, evaluator.Minutes(instance.Problem.Begin()), Tolerance);
    }

    // Sources: 2.18 Pattipati and Alexandridis, IEEE Trans. SMC 20(4), 1990, 872-887, worked example;
    // 1.45 Ottosen and Jensen, A* Wars, PGM 2008, dependent actions; 2.24 Huffman's textbook example, weights
    // 45, 13, 12, 16, 9, 5; 3 half-split theorem; 35.4 p/c theorem (Kadane and Simon 1977); 21.95 cost cluster with
    // inside information (Ottosen and Jensen, UAI 2010). The last two with own numbers, in closed form.
    [Theory]
    [InlineData("pub-pattipati-alexandridis-1990", 2.18)]
    [InlineData("pub-dependent-actions", 1.45)]
    [InlineData("pub-huffman-all-splits", 2.24)]
    [InlineData("thm-half-split-chain", 3)]
    [InlineData("thm-p-over-c", 35.4)]
    [InlineData("thm-cost-cluster-inside-information", 21.95)]
    public void Plan_PublishedProblem_HasThePublishedValue(string id, double published)
    {
        SequencingInstance instance = SequencingFile.Instance(id);
        Assert.Equal(published, instance.PublishedValue);
        Assert.Equal(published, new ExactPlanner().Plan(instance.Problem, instance.Problem.Begin()).Minutes, Tolerance);
    }

    [Fact]
    public void Plan_WorkUsedUp_SaysSoAndKeepsTrueBounds()
    {
        SequencingInstance instance = SequencingFile.Instance("s-trap-04-weakcheap");
        Plan plan = new ExactPlanner(workLimit: 50).Plan(instance.Problem, instance.Problem.Begin());
        Assert.False(plan.IsExact);
        Assert.InRange(instance.ExpectedCost, plan.LowerBound, plan.Minutes);
    }

    [Fact]
    public void ExactPlanner_WorkLimitNotAboveZero_Throws() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => new ExactPlanner(0));
}
