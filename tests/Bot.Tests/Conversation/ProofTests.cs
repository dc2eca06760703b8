using DxAssistant.Conversation.Messages;
using DxAssistant.Conversation.Replies;
using DxAssistant.Graph.Model;

namespace DxAssistant.Bot.Tests.Conversation;

/// <summary>No part is changed before the checks that its proof names are done, as far as they can be done.</summary>
public sealed class ProofTests
{
    [Theory]
    [InlineData("inverter-code", "power-module-shorted", "module-diodes", "replace-inverter-board")]
    [InlineData("room-sensor-code", "sensor-room-air", "room-sensor-resistance", "replace-room-sensor")]
    [InlineData("indoor-fan-fault", "indoor-fan-motor-failed", "fan-windings", "replace-indoor-fan-motor")]
    [InlineData("water-overflow-code", "float-switch-open", "float-continuity", "replace-float-switch")]
    public void Walk_PartFailed_ItsProofComesBeforeThePart(string symptom, string fault, string proof, string repair)
    {
        WalkRecord walk = HiddenFault.Typical(fault)
            .Walk(new Walker(ShippedContent.Assistant).Begin("brenholt-ws", "refrigerant", symptom));
        Assert.Equal(fault, walk.Proven);
        Assert.True(walk.PlaceOf(proof) < walk.PlaceOf(repair), string.Join(" → ", walk.Steps));
        Assert.Contains(new CheckId(proof), ShippedContent.Library.Faults[new FaultId(fault)].Demanded);
    }

    [Fact]
    public void Conclusion_ProofCannotBeDone_SaysWhatIsMissing()
    {
        Walker walker = new Walker(ShippedContent.Assistant).Begin("brenholt-ws", "technician", "room-sensor-code")
            .MakeSafe();
        HiddenFault unit = HiddenFault.Typical("sensor-room-air");
        while (walker.Question.Kind != QuestionKind.Repair && walker.State.ClosedHow is null)
            if (walker.Question is { Kind: QuestionKind.Check, Subject: "room-sensor-resistance" })
                walker.Order(CommandWord.Cannot);
            else if (walker.Question.Kind == QuestionKind.Proof) walker.Tap("without");
            else unit.Answer(walker);
        Segment conclusion = walker.Log.OfType<DxAssistant.Conversation.Events.Replied>()
            .SelectMany(replied => replied.Reply.Segments)
            .First(segment => segment.Kind == SegmentKind.Conclusion);
        Assert.Contains(new Provenance.Phrase("conclusion-unproven"), conclusion.From);
    }

    [Fact]
    public void Repair_ProofLeftOut_IsAskedForOnceMoreBeforeThePart()
    {
        Walker walker = AtTheGap("room-sensor-resistance");
        Assert.Equal("room-sensor-resistance", walker.Question.Subject);
        Assert.DoesNotContain(walker.Reply.Segments, segment => segment.Kind == SegmentKind.Repair);
        walker.Tap("room-sensor-resistance");
        walker.MakeSafe();
        Assert.Equal((QuestionKind.Check, "room-sensor-resistance"), (walker.Question.Kind, walker.Question.Subject));
        walker.Order(CommandWord.Cannot);
        while (walker.Question.Kind is not QuestionKind.Repair && walker.State.ClosedHow is null)
            HiddenFault.Typical("sensor-room-air").Answer(walker);
        Assert.Single(walker.Log.OfType<DxAssistant.Conversation.Events.ProofGapTold>());
    }

    [Fact]
    public void Repair_ProofLeftOut_CanBeLeftToOthers()
    {
        Walker walker = AtTheGap("room-sensor-resistance");
        walker.Tap("leave");
        Assert.Equal("book", walker.State.ClosedHow);
    }

    [Fact]
    public void Repair_ProofLeftOut_TakenBack_IsAskedAgain()
    {
        Walker walker = AtTheGap("room-sensor-resistance");
        walker.Tap("without");
        Assert.Contains("room-sensor-resistance", walker.State.GapsTold);
        walker.Order(CommandWord.Back);
        Assert.Empty(walker.State.GapsTold);
        Assert.Equal(QuestionKind.Proof, walker.Question.Kind);
    }

    // Found at 96 %: what only makes it a little surer is an idle minute.
    [Fact]
    public void Check_FaultFound_IsTheOneThatProvesIt()
    {
        Walker walker = new Walker(ShippedContent.Assistant).Begin("veldarn-nord", "technician", "controller-no-link");
        while (!IsFound(walker)) HiddenFault.Typical("wired-controller-link").Answer(walker);
        walker.MakeSafe();
        Assert.Equal((QuestionKind.Check, "controller-short-lead"), (walker.Question.Kind, walker.Question.Subject));

        static bool IsFound(Walker walker) =>
            walker.Reply.Belief is [{ Fault: "wired-controller-link", Probability: >= 0.95 }, ..];
    }

    private static Walker AtTheGap(string check)
    {
        Walker walker = new Walker(ShippedContent.Assistant).Begin("brenholt-ws", "technician", "room-sensor-code")
            .MakeSafe();
        HiddenFault unit = HiddenFault.Typical("sensor-room-air");
        while (walker.Question.Kind != QuestionKind.Proof)
            if (walker.Question.Kind == QuestionKind.Check && walker.Question.Subject == check)
                walker.Order(CommandWord.Cannot);
            else unit.Answer(walker);
        return walker;
    }
}
