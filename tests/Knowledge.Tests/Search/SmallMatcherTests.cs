using System.Collections.Immutable;
using DxAssistant.Knowledge.Search;
using DxAssistant.Knowledge.Search.Indexing;
using DxAssistant.Knowledge.Search.Terms;

namespace DxAssistant.Knowledge.Tests.Search;

/// <summary>The matcher over a handful of made-up pages, so that one thing at a time shows.</summary>
public sealed class SmallMatcherTests
{
    private static readonly ImmutableArray<SearchEntry> Pages =
    [
        new(NodeKind.Fault, "hose-blocked", "Hose blocked", ["gunk in a hose"], ""),
        new(NodeKind.Fault, "pump-dead", "Pump dead", ["pump has died"], ""),
        new(NodeKind.Symptom, "puddle", "Puddle on the floor", ["water under the unit"], ""),
        new(NodeKind.Check, "pump-look", "Pump", [], "Does the pump run?"),
    ];

    private static Matcher With(params (string Symptom, string Fault, double Probability, double Weight)[] links) =>
        new(SearchIndex.Build(Pages, []), new FakeCauses(links));

    [Fact]
    public void Match_SymptomOnly_RanksItsCausesByProbabilityTimesWeight()
    {
        var matcher = With(("puddle", "hose-blocked", 0.9, 1), ("puddle", "pump-dead", 0.3, 8));
        Assert.Equal(["pump-dead", "hose-blocked"],
            matcher.Match("puddle on the floor").Candidates.Select(candidate => candidate.Id));
    }

    [Fact]
    public void Match_FaultSaidOutright_BeatsTheLikelierCauseOfTheSymptom()
    {
        var matcher = With(("puddle", "hose-blocked", 0.9, 8), ("puddle", "pump-dead", 0.3, 1));
        Assert.Equal("pump-dead", matcher.Match("puddle on the floor, pump has died").Candidates[0].Id);
    }

    [Fact]
    public void Match_SynonymOfTheGlossary_MeetsThePage()
    {
        var glossary = new SynonymGroup("hose", ["spaghetti"], ["hoes"]);
        var matcher = new Matcher(SearchIndex.Build(Pages, [glossary]), new FakeCauses());
        Assert.Equal("hose-blocked", matcher.Match("gunk in the spaghetti").Candidates[0].Id);
        Assert.Equal("hose-blocked", matcher.Match("blocked hoes").Candidates[0].Id);
    }

    [Fact]
    public void Match_PartSaidToWork_DeniesItsFaultAndItsCheck()
    {
        var denied = With().Match("hose blocked, pump is fine").Denied;
        Assert.Equal([(NodeKind.Fault, "pump-dead"), (NodeKind.Check, "pump-look")],
            denied.Select(mention => (mention.Kind, mention.Id)).Order());
    }

    [Fact]
    public void Match_OwnWordsOfAFault_IsCertain()
    {
        var result = With().Match("gunk in a hose");
        Assert.Equal(MatchDecision.Fault, result.Decision);
        Assert.Equal("hose-blocked", result.Candidates[0].Id);
    }
}
