using System.Collections.Immutable;
using DxAssistant.Bot.Tests.Server;
using DxAssistant.Conversation;
using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.Messages;
using DxAssistant.Conversation.Replies;
using DxAssistant.Conversation.State;
using DxAssistant.Server.Simulating;
using DxAssistant.Server.Summary;

namespace DxAssistant.Bot.Tests.Conversation;

/// <summary>
/// A fault that was seen beside the first: what is known of the unit goes over into the search for it.
/// </summary>
public sealed class SecondFaultTests
{
    private const string Measured = "controller-voltage", LeftOut = "coil-look", Beside = "wheel-look", Repair =
        "wash-filter";

    [Fact]
    public void GoOn_SeenBeside_ResultsKeepReadingsVerdictAndWords()
    {
        Walker walker = AtLeftOver();
        SeenResult[] kept = [.. walker.State.Results.Where(result => !IsChanged(result.Check))];
        walker.Tap($"seen:{Beside}");
        Assert.Contains(kept, result => result is { Check: Measured, Verdict: "within", Readings.Length: 1 });
        Assert.Equal(kept, walker.State.Results);
    }

    [Fact]
    public void GoOn_SeenBeside_ModeAndWhatWasLeftOutStayKnown()
    {
        Walker walker = AtLeftOver();
        walker.Tap($"seen:{Beside}");
        Assert.Equal("cooling", walker.State.Mode);
        Assert.Equal(CommandWord.Cannot, walker.State.PassedOver[LeftOut]);
        Assert.Equal("weak-airflow", Assert.Single(walker.State.Symptoms).Symptom);
    }

    [Fact]
    public void GoOn_SeenBeside_BillsNoMinuteTwice()
    {
        Walker walker = AtLeftOver();
        (double minutes, int checks) = Billed(walker);
        walker.Tap($"seen:{Beside}");
        Assert.Equal((minutes, checks), Billed(walker));
    }

    [Fact]
    public void GoOn_SeenBeside_SummaryHasTheResultsWithTheirFiguresAndTimesInBothParts()
    {
        Walker walker = AtLeftOver();
        walker.Tap($"seen:{Beside}");
        CaseSummary summary = Summaries.Of(walker.Log);
        Assert.Equal(2, summary.Parts.Length);
        Assert.All(summary.Parts[1].Checks, check =>
            Assert.Equal(summary.Parts[0].Checks.Single(first => first.Title == check.Title), check));
        Assert.Contains(summary.Parts[1].Checks, check => check.Title == Measured && check.Figures is not null);
    }

    [Fact]
    public void GoOn_SeenBeside_SummaryHasTheRepairInItsOwnPartOnly()
    {
        Walker walker = AtLeftOver();
        walker.Tap($"seen:{Beside}");
        CaseSummary summary = Summaries.Of(walker.Log);
        Assert.Single(summary.Parts[0].Repairs);
        Assert.Empty(summary.Parts[1].Repairs);
    }

    // The filter was put right and is no longer in question; the wheel that was seen is what the search begins with.
    [Fact]
    public void GoOn_SeenBeside_TheFaultSeenLeadsAndIsAskedAbout()
    {
        Walker walker = AtLeftOver();
        walker.Tap($"seen:{Beside}");
        Assert.Equal("blower-wheel-dirty", walker.Reply.Belief[0].Fault);
        Assert.DoesNotContain(walker.Reply.Belief, line => line.Fault == "filter-blocked");
    }

    [Fact]
    public void GoOn_SeenBeside_TakenBack_AsksAgain()
    {
        Walker walker = AtLeftOver();
        ImmutableArray<SeenResult> before = walker.State.Results;
        walker.Tap($"seen:{Beside}");
        walker.Order(CommandWord.Back);
        Assert.Equal(QuestionKind.LeftOver, walker.Question.Kind);
        Assert.Equal(before, walker.State.Results);
    }

    // As it was written down before results were carried over: told and seen anew.
    [Fact]
    public void Fold_GoneOnByAnOlderProgram_IsReadAsItWas()
    {
        Walker walker = AtLeftOver();
        SeenResult wheel = walker.State.Results.Single(result => result.Check == Beside);
        walker.Note(
            new SecondFaultBegun(), new SymptomReported("weak-airflow", 1, "weak"),
            new RepairTriedBefore(Repair, "filter-blocked", "washed"),
            new OutcomeSeen(Beside, wheel.Outcome, wheel.Weights, null, wheel.Words));
        Assert.Equal((Beside, wheel.Outcome),
            (Assert.Single(walker.State.Results).Check, walker.State.Results[0].Outcome));
        Assert.Equal((Repair, false), (Assert.Single(walker.State.Repairs).Repair, walker.State.Repairs[0].Works));
    }

    // Filter and blower wheel seen dirty, the filter washed, the unit tried; a voltage was measured, and a coil could
    // not be seen.
    private static Walker AtLeftOver()
    {
        Walker walker = new Walker(ShippedContent.Assistant).Begin("brenholt-ws", "technician", "weak-airflow");
        walker.Say("filter is dirty and the fan wheel is dirty");
        walker.Tap("yes");
        walker.Note(
            new ModeStated("cooling"), new CheckPassedOver(LeftOut, CommandWord.Cannot),
            new ReadingsGiven(Measured, [new GivenReading("line", "number", 230, "V", "230")]),
            new OutcomeSeen(Measured, null, [.. ShippedContent.Library.Checks[new(Measured)].Outcomes.Select(_ => 1.0)],
                "within", "230 V"),
            new Replied(walker.Reply
                with { Segments = [new Segment(SegmentKind.Verdict, "within", [],
                    new VerdictFigures("within", true, [new ShownReading("line", "230 V", false)], [], [], "rule",
                        "source"))] }));
        walker.Tap("done");
        walker.Tap("yes");
        Assert.Equal(QuestionKind.LeftOver, walker.Question.Kind);
        return walker;
    }

    private static bool IsChanged(string check) =>
        ShippedContent.Library.Repairs[new(Repair)].Changes.Contains(new(check));

    private static (double Minutes, int Checks) Billed(Walker walker)
    {
        var clock = new WalkClock(ShippedContent.Library);
        foreach (CaseEvent happened in walker.Log) clock.Count(happened);
        return (clock.Minutes, clock.Checks);
    }
}
