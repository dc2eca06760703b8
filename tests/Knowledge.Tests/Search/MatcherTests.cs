using CsCheck;
using DxAssistant.Knowledge.Search;
using DxAssistant.Knowledge.Search.Indexing;

namespace DxAssistant.Knowledge.Tests.Search;

public sealed class MatcherTests
{
    [Theory]
    [InlineData("drain is clear but the indoor fan motor is dead", "indoor-fan-motor-failed", "drain-blocked")]
    [InlineData("no leaks, the line set is kinked", "restriction-kink", "undercharge-leak")]
    [InlineData("filters are fine, evaporator is filthy", "indoor-coil-dirty", "filter-blocked")]
    [InlineData("already replaced the indoor fan motor, found the fan plug loose", "indoor-fan-plug-loose",
        "indoor-fan-motor-failed")]
    [InlineData("it's not the filter, the blower wheel is caked", "blower-wheel-dirty", "filter-blocked")]
    [InlineData("no sign of a leak, the filter is blocked", "filter-blocked", "undercharge-leak")]
    [InlineData("nothing wrong with the compressor, the module is shorted", "power-module-shorted",
        "compressor-winding")]
    [InlineData("ruled out the compressor, module is shorted", "power-module-shorted", "compressor-winding")]
    [InlineData("rather than the pump it's the hose that is blocked", "drain-blocked", "condensate-pump-failed")]
    [InlineData("the handset is mint, the wall pad dropped off the bus", "wired-controller-link",
        "remote-control-faulty")]
    public void Match_PartRuledOut_IsDeniedAndNotFirst(string text, string first, string denied)
    {
        var result = ShippedMatcher.Match(text);
        Assert.Equal(first, result.Candidates[0].Id);
        Assert.Contains(result.Denied, mention => mention.Kind == NodeKind.Fault && mention.Id == denied);
    }

    [Theory]
    [InlineData("rinsed the filters and they are clear, but the coil behind them is packed with fluff",
        "indoor-coil-dirty")]
    [InlineData("bubble level on the case shows it tips to the wrong end, away from the drain", "unit-not-level")]
    [InlineData("cable is sound and the indoor board is new, the outdoor board never replies",
        "comm-circuit-outdoor-board")]
    public void Match_WordsSharedWithWhatIsRuledOut_DoNotRuleOutTheComplaint(string text, string fault)
    {
        var result = ShippedMatcher.Match(text);
        Assert.Equal(fault, result.Candidates[0].Id);
        Assert.DoesNotContain(result.Denied, mention => mention.Kind == NodeKind.Fault && mention.Id == fault);
    }

    [Theory]
    [InlineData("not cooling")]
    [InlineData("won't turn on")]
    [InlineData("fan doesn't spin")]
    [InlineData("no power")]
    [InlineData("not draining")]
    [InlineData("no communication between the units")]
    public void Match_NegationThatIsTheComplaint_NamesFaultsAndDeniesNothing(string text)
    {
        var result = ShippedMatcher.Match(text);
        Assert.NotEmpty(result.Candidates);
        Assert.Empty(result.Denied);
    }

    [Theory]
    [InlineData("hello")]
    [InlineData("Hi there!")]
    [InlineData("good morning")]
    [InlineData("hello, how are you")]
    public void Match_Greeting_IsAnsweredAsOne(string text)
    {
        var result = ShippedMatcher.Match(text);
        Assert.Equal((MatchDecision.None, "off-topic-greeting"), (result.Decision, result.RefusalId));
    }

    [Theory]
    [InlineData("is the service valve open")]
    [InlineData("reversing valve bypass, hot gas goes straight to suction")]
    [InlineData("what is the bypass factor of the coil")]
    [InlineData("float switch jumper fell off")]
    [InlineData("last guy overcharged it")]
    [InlineData("found the contactor burnt")]
    [InlineData("dip switch and jumper settings are wrong")]
    [InlineData("blows hot air in cooling")]
    [InlineData("breaker trips when the compressor starts")]
    [InlineData("unit won't turn off")]
    [InlineData("homeowner says it is blowing warm")]
    [InlineData("found the float switch bypassed by the last guy")]
    [InlineData("vent hose of the drain is blocked")]
    [InlineData("fuse keeps blowing")]
    [InlineData("high pressure switch reads open")]
    [InlineData("I measured 230 live at the terminals")]
    [InlineData("works without the wifi module")]
    [InlineData("a wire shorted across the terminals")]
    [InlineData("how do i check the high pressure switch")]
    [InlineData("can i clean the filter myself")]
    [InlineData("customer put a bigger breaker in")]
    [InlineData("without a vacuum pump they installed it")]
    [InlineData("outside air sensor reads open")]
    [InlineData("replaced the board and still E5")]
    [InlineData("it stands still")]
    [InlineData("the fan just stands there")]
    public void Match_HarmlessTalkWithDangerousWords_IsNotRefused(string text) =>
        Assert.NotEqual(MatchDecision.Refuse, ShippedMatcher.Match(text).Decision);

    [Theory]
    [InlineData("bypass the float switch", "defeat-protection")]
    [InlineData("can I jumper out the high pressure switch", "defeat-protection")]
    [InlineData("how do I vent the gas", "vent-refrigerant")]
    [InlineData("I'll work on it hot", "work-live")]
    [InlineData("can i charge it with propane", "mix-refrigerants")]
    [InlineData("mix a little 22 with what is in it, ok?", "mix-refrigerants")]
    [InlineData("is it ok to warm the gas bottle on the hob", "heat-charged-circuit")]
    public void Match_DangerousRequest_IsRefusedWithItsPage(string text, string page)
    {
        var result = ShippedMatcher.Match(text);
        Assert.Equal(MatchDecision.Refuse, result.Decision);
        Assert.Equal(page, result.RefusalId);
        Assert.Empty(result.Candidates);
    }

    [Theory]
    [InlineData("condencer fan moter burnd out", "outdoor-fan-motor-failed")]
    [InlineData("drane hose is cloged", "drain-blocked")]
    [InlineData("thremister in the room is opne", "sensor-room-air")]
    [InlineData("heatsink is overheating", "power-module-overheating")]
    [InlineData("mould all over the blower wheel", "blower-wheel-dirty")]
    [InlineData("four way valve stuck", "reversing-valve-stuck")]
    [InlineData("4-way valve coil open", "reversing-valve-coil-open")]
    public void Match_MisspelledGluedOrBritish_FindsTheFault(string text, string fault) =>
        Assert.Equal(fault, ShippedMatcher.Match(text).Candidates[0].Id);

    [Theory]
    [InlineData("")]
    [InlineData("   ")]
    [InlineData("E5: (")]
    [InlineData("\"~*?:\\/[]{}^")]
    public void Match_NothingSaid_NamesNoFault(string text) => Assert.Empty(ShippedMatcher.Match(text).Candidates);

    [Fact]
    public void Match_CodeWithSeries_RanksTheFaultsBehindIt()
    {
        var result = ShippedMatcher.Match("it shows E5", "brenholt-ws");
        Assert.Equal("E5", Assert.Single(result.Codes));
        Assert.Contains("indoor-fan-fault", result.Symptoms.Select(symptom => symptom.Id));
        Assert.NotEmpty(result.Candidates);
    }

    [Theory]
    [InlineData("printer error E5")]
    [InlineData("the dishwasher pump is dead")]
    [InlineData("when was the warranty law passed")]
    public void Match_AnotherTrade_FindsNothing(string text) =>
        Assert.Equal(MatchDecision.None, ShippedMatcher.Match(text).Decision);

    [Fact]
    public void Match_CodeWithoutSeries_AsksBack() =>
        Assert.Equal(MatchDecision.Clarify, ShippedMatcher.Match("E5").Decision);

    // CsCheck prints the seed of a failing case.
    [Fact]
    public void Match_ArbitraryText_NeverThrowsAndKeepsItsContract() => Gen.String.Sample(text =>
    {
        var result = ShippedMatcher.Match(text);
        Assert.InRange(result.Candidates.Length, 0, 5);
        Assert.All(result.Candidates, candidate => Assert.InRange(candidate.Score, 0, 1));
        Assert.Equal(result.Candidates.OrderByDescending(candidate => candidate.Score)
            .Select(candidate => candidate.Score), result.Candidates.Select(candidate => candidate.Score));
        Assert.True(result.Decision is not MatchDecision.Refuse || result.Candidates.IsEmpty, text);
    }, iter: 200);

    [Fact]
    public void Match_PagesInAnotherOrder_GivesTheSameAnswers()
    {
        var library = ShippedMatcher.Library;
        var reversed = new Matcher(
            SearchIndex.Build(SearchEntries.From(library).Reverse(), SearchEntries.Glossary(library).Reverse()),
            new LibraryCauses(library));
        foreach (var phrase in JudgedPhrase.Read("match-dev.jsonl").Take(60))
        {
            var (one, other) = (ShippedMatcher.Match(phrase.Text), reversed.Match(phrase.Text));
            Assert.Equal(one.Decision, other.Decision);
            Assert.Equal(one.Candidates.AsEnumerable(), other.Candidates.AsEnumerable());
        }
    }

    [Fact]
    public async Task Match_ManyAtOnce_GivesTheSameAnswers()
    {
        var texts = JudgedPhrase.Read("match-dev.jsonl").Take(40).Select(phrase => phrase.Text).ToArray();
        var alone = texts.Select(text => ShippedMatcher.Match(text)).ToArray();
        var together = await Task.WhenAll(texts.Select(text => Task.Run(() => ShippedMatcher.Match(text))));
        for (var i = 0; i < texts.Length; i++)
            Assert.Equal(alone[i].Candidates.AsEnumerable(), together[i].Candidates.AsEnumerable());
    }
}
