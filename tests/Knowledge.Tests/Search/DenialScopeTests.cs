using DxAssistant.Knowledge.Search.Indexing;

namespace DxAssistant.Knowledge.Tests.Search;

/// <summary>How far "fine", "replaced" and "not" reach.</summary>
public sealed class DenialScopeTests
{
    // Words that are healthy elsewhere and say nothing of health here.
    [Theory]
    [InlineData("the spirit level says it hangs 9 mm low on the side away from the outlet", "unit-not-level")]
    [InlineData("comms fault straight after the wiring, cores 1 and 3 crossed at the outdoor block", "comm-miswired")]
    [InlineData("L1 is dead at the disconnect, other two phases fine", "phase-loss")]
    [InlineData("everything except the reversing valve coil checks out, that one is open", "reversing-valve-coil-open")]
    [InlineData("lines were never vacuumed, the needle jumps", "non-condensables")]
    [InlineData("charge weighed 1.9 kg where the plate says 1.2", "overcharge")]
    [InlineData("changeover valve moves freely, its coil is open", "reversing-valve-coil-open")]
    [InlineData("overload on the compressor lets go in the heat and half an hour later it is fine again",
        "discharge-overload-open")]
    public void Match_HealthyWordInAnotherSense_RulesNothingOut(string text, string fault) =>
        Assert.DoesNotContain(ShippedMatcher.Match(text).Denied, mention => mention.Kind == NodeKind.Fault
            && mention.Id == fault);

    // What was worked upon and then ran was the fault.
    [Theory]
    [InlineData("pushed the indoor fan plug home, it was half out, reseated and it runs", "indoor-fan-plug-loose")]
    [InlineData("reseated the louver plug and it works", "louver-plug-loose")]
    public void Match_WorkThatCured_IsNotDenied(string text, string fault) =>
        Assert.DoesNotContain(ShippedMatcher.Match(text).Denied, mention => mention.Kind == NodeKind.Fault
            && mention.Id == fault);

    [Theory]
    [InlineData("reversing valve is fine but no heat", "reversing-valve-stuck")]
    [InlineData("no phase is missing, they only differ by 30 volts", "phase-loss")]
    [InlineData("proper vacuum was pulled, somebody simply put too much gas in", "non-condensables")]
    [InlineData("the wheel was cleaned in spring, the filter is grey", "blower-wheel-dirty")]
    [InlineData("no lights on the head. fresh batteries in the remote", "remote-control-faulty")]
    [InlineData("no lights on the head, new remote no odds", "remote-control-faulty")]
    public void Match_PartSaidToBeWell_IsDeniedAndNotFirst(string text, string denied)
    {
        var result = ShippedMatcher.Match(text);
        Assert.Contains(result.Denied, mention => mention.Kind == NodeKind.Fault && mention.Id == denied);
        Assert.NotEqual(denied, result.Candidates[0].Id);
    }

    // What somebody believed before the message turns from it.
    [Theory]
    [InlineData("apprentice blamed the remote, turned out the display ribbon was half off", "remote-control-faulty")]
    [InlineData("I suspected the drain pump, but the hose is kinked behind the unit", "condensate-pump-failed")]
    public void Match_BeliefThatWasMistaken_IsNotFirst(string text, string denied) =>
        Assert.NotEqual(denied, ShippedMatcher.Match(text).Candidates[0].Id);

    [Theory]
    [InlineData("blower wheel was deep cleaned last week, the screens are black", "blower-wheel-dirty")]
    [InlineData("evaporator and roller were deep cleaned in may, it is the filter that is grey", "blower-wheel-dirty")]
    public void Match_DeepCleanedPart_IsDeniedAndNotFirst(string text, string denied)
    {
        var result = ShippedMatcher.Match(text);
        Assert.Contains(result.Denied, mention => mention.Kind == NodeKind.Fault && mention.Id == denied);
        Assert.NotEqual(denied, result.Candidates[0].Id);
    }

    // "Not frozen by low gas" says that the gas is well.
    [Fact]
    public void Match_CauseOfAnIllDenied_RulesOutTheCause()
    {
        var result = ShippedMatcher.Match(
            "coil is not iced because of low charge, they run it at 16 on cold nights and the freeze protection "
                + "rests it");
        Assert.Contains(result.Denied, mention => mention.Kind == NodeKind.Fault && mention.Id == "undercharge-leak");
        Assert.NotEqual("undercharge-leak", result.Candidates[0].Id);
    }

    [Theory]
    [InlineData("charge is right, the strainer has a cold spot across it", "undercharge-leak")]
    [InlineData("gas weighed in to the gram, the liquid line is flattened", "overcharge")]
    public void Match_ChargeSaidToBeRight_RulesOutTooLittleAndTooMuch(string text, string denied) =>
        Assert.Contains(ShippedMatcher.Match(text).Denied, mention => mention.Kind == NodeKind.Fault
            && mention.Id == denied);

    // The words that rule out stand apart from the part, before or after it.
    [Theory]
    [InlineData("first I blamed the filter, clean as a whistle, it is the coil that is filthy", "filter-blocked")]
    [InlineData("is it the filter? cleaned it. the coil is a carpet of dust", "filter-blocked")]
    [InlineData("no phase missing, just reversed rotation", "phase-loss")]
    [InlineData("indoor board has been swapped twice, the motor does nothing with 310 volts at its plug",
        "indoor-board-failed")]
    [InlineData("swapped indoor board no change, signal wire is broken at a splice", "comm-circuit-indoor-board")]
    [InlineData("heat sink is cool so not overheating module thermistor is open", "power-module-overheating")]
    [InlineData("lines are insulated, the tray is cracked and leaks", "line-insulation-missing")]
    [InlineData("charge is right, vacuum was proper, two gases are in there", "non-condensables")]
    public void Match_DenialAwayFromItsPart_IsNotFirst(string text, string denied) =>
        Assert.NotEqual(denied, ShippedMatcher.Match(text).Candidates[0].Id);

    // The same words where they rule nothing out.
    [Theory]
    [InlineData("the two signal wires have been swapped", "comm-miswired")]
    [InlineData("bare suction line, nobody lagged it", "line-insulation-missing")]
    [InlineData("lines are badly insulated and drip", "line-insulation-missing")]
    [InlineData("wrong rotation", "phase-sequence-reversed")]
    public void Match_SameWordsOfATrouble_RuleNothingOut(string text, string fault) =>
        Assert.Equal(fault, ShippedMatcher.Match(text).Candidates[0].Id);

    [Fact]
    public void Match_ValveThatOpensAndCloses_IsNotStuck() =>
        Assert.NotEqual("expansion-valve-stuck",
            ShippedMatcher.Match(
                "expansion valve opens and closes, the liquid pipe is crushed under the decking").Candidates[0].Id);
}
