using DxAssistant.Knowledge.Search.Indexing;

namespace DxAssistant.Knowledge.Tests.Search;

/// <summary>How far "fine", "replaced" and "not" reach.</summary>
public sealed class DenialScopeTests
{
    // Words that are healthy elsewhere and say nothing of health here.
    [Theory]
    [InlineData("the spirit level says it hangs 9 mm low on the side away from the outlet", "unit-not-level")]
    [InlineData("comms fault straight after the wiring, cores 1 and 3 crossed at the outdoor block", "comm-miswired")]
    [InlineData("overload on the compressor lets go in the heat and half an hour later it is fine again", "discharge-overload-open")]
    public void Match_HealthyWordInAnotherSense_RulesNothingOut(string text, string fault) =>
        Assert.DoesNotContain(ShippedMatcher.Match(text).Denied, mention => mention.Kind == NodeKind.Fault && mention.Id == fault);

    // What was worked upon and then ran was the fault.
    [Theory]
    [InlineData("pushed the indoor fan plug home, it was half out, reseated and it runs", "indoor-fan-plug-loose")]
    [InlineData("reseated the louver plug and it works", "louver-plug-loose")]
    public void Match_WorkThatCured_IsNotDenied(string text, string fault) =>
        Assert.DoesNotContain(ShippedMatcher.Match(text).Denied, mention => mention.Kind == NodeKind.Fault && mention.Id == fault);

    [Theory]
    [InlineData("no phase is missing, they only differ by 30 volts", "phase-loss")]
    [InlineData("proper vacuum was pulled, somebody simply put too much gas in", "non-condensables")]
    [InlineData("the wheel was cleaned in spring, the filter is grey", "blower-wheel-dirty")]
    public void Match_PartSaidToBeWell_IsDeniedAndNotFirst(string text, string denied)
    {
        var result = ShippedMatcher.Match(text);
        Assert.Contains(result.Denied, mention => mention.Kind == NodeKind.Fault && mention.Id == denied);
        Assert.NotEqual(denied, result.Candidates[0].Id);
    }
}
