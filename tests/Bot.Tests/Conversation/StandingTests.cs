using System.Collections.Immutable;
using DxAssistant.Conversation;
using DxAssistant.Conversation.State;
using DxAssistant.Graph;
using DxAssistant.Graph.Model;
using DxAssistant.Knowledge.Content;

namespace DxAssistant.Bot.Tests.Conversation;

/// <summary>How the faults stand in a case is what the graph believes, and nothing before a symptom is known.</summary>
public sealed class StandingTests
{
    private static readonly Library Library = ShippedContent.Library;

    [Fact]
    public void Case_WithoutSymptom_HasNoStanding()
    {
        Assert.Empty(Standing.Possible(Library, CaseState.New));
        Assert.Null(Standing.Likeliest(Library, CaseState.New));
        Assert.Equal(0, Standing.BeliefIn(Library, CaseState.New, Library.Graph.Faults[0].Id));
    }

    // Definition: the belief of the graph, likeliest first; named is the likeliest, and what the setting calls likely
    // enough.
    [Theory]
    [InlineData("poor-cooling")]
    [InlineData("unit-dead")]
    [InlineData("trips-breaker")]
    public void Case_WithASymptom_StandsAsTheGraphBelieves(string symptom)
    {
        CaseState state = new Walker(ShippedContent.Assistant).Begin("brenholt-ws", "technician", symptom).State;
        ImmutableArray<RankedFault> ranked = new CaseView(Library, state).Belief.Ranked;
        Assert.Equal(ranked[0].Id, Standing.Likeliest(Library, state));
        Assert.All(ranked, fault => Assert.Equal(fault.Probability, Standing.BeliefIn(Library, state, fault.Id), 12));
        ImmutableArray<RankedFault> possible = Standing.Possible(Library, state);
        Assert.Equal(ranked[0], possible[0]);
        Assert.Equal(ranked.Skip(1).Count(fault => fault.Probability >= Library.Settings.Suspected),
            possible.Length - 1);
        Assert.True(possible.Length < ranked.Length);
    }

    [Fact]
    public void Fault_NotInTheContent_HasNoBelief()
    {
        CaseState state = new Walker(ShippedContent.Assistant).Begin("brenholt-ws", "technician", "unit-dead").State;
        Assert.Equal(0, Standing.BeliefIn(Library, state, new FaultId("no-such-fault")));
    }
}
