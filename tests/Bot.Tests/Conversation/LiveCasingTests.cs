using DxAssistant.Bot.Tests.Server;
using DxAssistant.Conversation;
using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.Messages;
using DxAssistant.Conversation.Replies;
using DxAssistant.Conversation.State;
using DxAssistant.Graph.Model;
using DxAssistant.Server.Summary;

namespace DxAssistant.Bot.Tests.Conversation;

/// <summary>
/// A shock from the casing: nothing is touched that may be live, the earth comes first, and no power before it is
/// sound.
/// </summary>
public sealed class LiveCasingTests
{
    [Theory]
    [InlineData("technician")]
    [InlineData("refrigerant")]
    public void Shock_AnySeries_TheEarthIsMeasuredDeadFirst(string role)
    {
        foreach (string series in ShippedContent.Library.Series.Keys)
        {
            Walker walker = ShockOfTheUnitAlone(series, role);
            Assert.Equal(("earth-continuity", "isolated-open"), (walker.State.Step!.Id, walker.State.Access));
        }
    }

    // Common practice, no source: where other metal of the house tingles too, the fault lies in the fixed wiring.
    [Theory]
    [InlineData("technician")]
    [InlineData("refrigerant")]
    public void Shock_TapsTingleToo_UnitStaysOffUntouchedForAnElectrician(string role)
    {
        Walker walker = new Walker(ShippedContent.Assistant).Begin("tarn-duo", role, "shock-from-casing");
        Assert.Equal("tingle-elsewhere", walker.Question.Subject);
        walker.Tap("yes");
        Assert.Equal((QuestionKind.Repair, "have-house-earth-mended"), (walker.Question.Kind, walker.Question.Subject));
        Assert.Null(walker.State.Access);
        Assert.Contains(walker.Reply.Segments,
            segment => segment.Text.Contains("Touch neither unit nor isolator", StringComparison.Ordinal));
        Assert.Contains(walker.Reply.Segments,
            segment => segment.Text.Contains("licensed electrician", StringComparison.Ordinal));
    }

    // Common practice, no source: the earth of a house is an electrician's work, and nothing is switched on before it
    // is measured.
    [Theory]
    [InlineData("ok")]
    [InlineData("done")]
    public void Shock_EarthOfTheHouse_EndsWithTheUnitLeftOff(string said)
    {
        Walker walker = new Walker(ShippedContent.Assistant).Begin("tarn-duo", "technician", "shock-from-casing");
        walker.Tap("yes");
        walker.Say(said);
        Assert.Equal("book", walker.State.ClosedHow);
        Assert.Empty(walker.State.Repairs);
        Assert.Null(walker.State.Access);
    }

    // Whether the house is live is known before anybody opens the unit.
    [Theory]
    [InlineData("not really")]
    [InlineData("i doubt it")]
    [InlineData("i dont think so")]
    [InlineData("not sure")]
    [InlineData("skip")]
    [InlineData("no but the tap tingles a bit")]
    [InlineData("yes only the unit, nothing else")]
    [InlineData("it is just this unit")]
    [InlineData("yes I asked, just ours")]
    [InlineData("the display light is flickering")]
    [InlineData("I touched where they say the shower tingles, it is fine")]
    public void Shock_UnsureWhetherTheHouseIsLive_NothingIsOpened(string said)
    {
        Walker walker = new Walker(ShippedContent.Assistant).Begin("brenholt-ws", "technician", "shock-from-casing");
        walker.Say(said);
        Assert.Equal((QuestionKind.Check, "tingle-elsewhere"), (walker.Question.Kind, walker.Question.Subject));
        Assert.Empty(walker.State.PassedOver);
        Assert.DoesNotContain(walker.Reply.Segments, segment => segment.Kind == SegmentKind.Refusal);
    }

    // What warns counts in whatever words.
    [Theory]
    [InlineData("yes the lamps flicker and get brighter")]
    [InlineData("the lamps get brighter at times")]
    [InlineData("the shower tingles a little")]
    [InlineData("yes a bit at the kitchen tap")]
    public void Shock_HouseIsLiveToo_InWhateverWords_NothingIsOpened(string said)
    {
        Walker walker = new Walker(ShippedContent.Assistant).Begin("brenholt-ws", "technician", "shock-from-casing");
        walker.Say(said);
        Assert.Equal((QuestionKind.Repair, "have-house-earth-mended"), (walker.Question.Kind, walker.Question.Subject));
    }

    [Fact]
    public void Shock_NobodyCanTellWhetherTheHouseIsLive_CaseIsLeft()
    {
        Walker walker = new Walker(ShippedContent.Assistant).Begin("brenholt-ws", "technician", "shock-from-casing");
        walker.Order(CommandWord.Cannot);
        Assert.Equal("book", walker.State.ClosedHow);
    }

    // Source: EN 50110-1 demands proof before work (limit of 5 V: common practice, no source).
    [Fact]
    public void Shock_CasingReadsLive_NothingIsTouched()
    {
        Walker walker = new Walker(ShippedContent.Assistant).Begin("brenholt-ws", "technician", "shock-from-casing");
        walker.Tap("no");
        while (walker.Question.Fields.IsEmpty) walker.Say("done");
        Assert.Equal("casing voltage", walker.Question.Fields[0].Label);
        walker.Say("118 V");
        Assert.Equal("casing voltage", walker.Question.Fields[0].Label);
        Assert.Contains(walker.Reply.Segments,
            segment => segment.From.Contains(new Provenance.Phrase("notice-not-safe")));
        walker.Say("2 V");
        Assert.Equal("supply voltage", walker.Question.Fields[0].Label);
    }

    [Fact]
    public void NoShock_CasingIsNotMeasuredFirst()
    {
        Walker walker = new Walker(ShippedContent.Assistant).Begin("brenholt-ws", "technician", "room-sensor-code");
        while (walker.Question.Fields.IsEmpty) walker.Say("done");
        Assert.Equal("supply voltage", walker.Question.Fields[0].Label);
    }

    [Fact]
    public void Shock_OpenEarth_IsProvenAndTheInsulationMeasuredBeforePowerComesBack()
    {
        Walker walker = EarthRestored();
        Assert.Equal((QuestionKind.Check, "unit-insulation"), (walker.Question.Kind, walker.Question.Subject));
        Assert.Equal("isolated-open", walker.State.Access);
        walker.Say("20 MΩ");
        walker.MakeSafe();
        Assert.Equal((QuestionKind.Verify, "restore-earth"), (walker.Question.Kind, walker.Question.Subject));
    }

    [Fact]
    public void Shock_OpenEarthAndLowInsulation_AreTwoFaults()
    {
        Walker walker = EarthRestored();
        walker.Say("0.2 MΩ");
        Assert.Contains(walker.Log.OfType<FaultBeside>(),
            beside => beside is { Fault: "earth-open", Check: "unit-insulation" });
        Assert.Equal((QuestionKind.Check, "isolated-open"), (walker.Question.Kind, walker.State.Access));
        Assert.Equal("live-to-casing", walker.Reply.Belief[0].Fault);
        Assert.DoesNotContain(walker.Reply.Belief, line => line.Fault == "earth-open");
    }

    [Fact]
    public void Shock_OpenEarthAndLowInsulation_TheEarthIsSaidToBePutRightAndNoRepairToHaveFailed()
    {
        Walker walker = EarthRestored();
        walker.Say("0.3 MΩ");
        Reply why = walker.Say("why not earth open or missing");
        Assert.Contains(why.Segments, segment => segment.From.Contains(new Provenance.Phrase("fault-mended")));
        Assert.Contains(why.Segments, segment => segment.From.Contains(new Provenance.Phrase("ledger-mended")));
        Assert.DoesNotContain(why.Segments, segment => segment.From.Contains(new Provenance.Phrase("ledger-tried"))
            || segment.From.Contains(new Provenance.Phrase("fault-out")));
    }

    [Fact]
    public void Shock_OpenEarthAndLowInsulation_SummaryHasTheEarthMended()
    {
        Walker walker = EarthRestored();
        walker.Say("0.3 MΩ");
        SummaryRepair repair = Assert.Single(Assert.Single(Summaries.Of(walker.Log).Parts).Repairs);
        Assert.Equal(("restore-earth", "earth-open", null, "unit-insulation"),
            (repair.Title, repair.Fault, repair.Works, repair.Beside));
    }

    [Fact]
    public void Shock_OpenEarthAndNoInsulationTester_UnitIsNotSwitchedOn()
    {
        Walker walker = EarthRestored();
        walker.Order(CommandWord.Cannot);
        Assert.Equal("book", walker.State.ClosedHow);
        Assert.Contains(walker.Reply.Segments,
            segment => segment.From.Contains(new Provenance.Phrase("trial-needs-check")));
    }

    [Fact]
    public void Shock_OpenEarthUnsureOfTheInsulation_IsAskedOnceMoreAndOffUntilThen()
    {
        Walker walker = EarthRestored();
        walker.Order(CommandWord.Unsure);
        Assert.Equal((QuestionKind.LeftOut, "unit-insulation"), (walker.Question.Kind, walker.Question.Subject));
        walker.Tap("unit-insulation");
        walker.Say("20 MΩ");
        walker.MakeSafe();
        Assert.Equal((QuestionKind.Verify, "restore-earth"), (walker.Question.Kind, walker.Question.Subject));
    }

    [Theory]
    [InlineData("end")]
    [InlineData("unit-insulation")]
    public void Shock_OpenEarthUnsureOfTheInsulationAgain_UnitIsNotSwitchedOn(string tapped)
    {
        Walker walker = EarthRestored();
        walker.Order(CommandWord.Unsure);
        walker.Tap(tapped);
        if (walker.State.ClosedHow is null) walker.Order(CommandWord.Unsure);
        Assert.Equal("book", walker.State.ClosedHow);
        Assert.Contains(walker.Reply.Segments,
            segment => segment.From.Contains(new Provenance.Phrase("trial-needs-check")));
    }

    private static Walker ShockOfTheUnitAlone(string series, string role)
    {
        Walker walker = new Walker(ShippedContent.Assistant).Begin(series, role, "shock-from-casing");
        walker.Tap("no");
        return walker.MakeSafe();
    }

    private static Walker EarthRestored()
    {
        Walker walker = ShockOfTheUnitAlone("brenholt-ws", "technician");
        walker.Say("OL");
        Assert.Equal((QuestionKind.Repair, "restore-earth"), (walker.Question.Kind, walker.Question.Subject));
        walker.Tap("done");
        return walker;
    }
}
