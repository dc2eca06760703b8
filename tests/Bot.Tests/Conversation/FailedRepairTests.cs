using DxAssistant.Conversation;
using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.Replies;
using DxAssistant.Conversation.State;
using DxAssistant.Graph.Model;

namespace DxAssistant.Bot.Tests.Conversation;

/// <summary>
/// A repair that did not cure rules its fault out; work that did not hold says nothing, and what a repair changed is
/// measured anew.
/// </summary>
public sealed class FailedRepairTests
{
    private const string Repair = "repair-leak-and-charge", Fault = "undercharge-leak";
    private const int MostTurns = 120;

    [Fact]
    public void Verify_NotCured_WhatTheRepairChangedCountsNoLongerAndMayBeAskedAgain()
    {
        Walker walker = AtVerification();
        double believed = Belief(walker).ProbabilityOf(new FaultId(Fault));
        string[] changed = [.. Measured(walker).Where(Changed)];
        string[] kept = [.. Measured(walker).Where(check => !Changed(check))];
        Assert.NotEmpty(changed);
        Assert.NotEmpty(kept);

        walker.Tap("no");

        Assert.Equal(kept, Measured(walker));
        Assert.Equal(changed, walker.State.Outdated.Select(result => result.Check));
        // A second leak or a wrong weight is not ruled out, only unlikely.
        Assert.InRange(Belief(walker).ProbabilityOf(new FaultId(Fault)), 0.001, believed / 2);
        Assert.Contains(walker.Reply.Segments,
            segment => segment.From.Contains(new Provenance.Phrase("results-outdated")));
        Assert.Contains(changed, check => AskedLater(walker, check));
    }

    [Fact]
    public void Verify_NotCured_TakenBack_AllCountsAgain()
    {
        Walker walker = AtVerification();
        string[] before = [.. Measured(walker)];
        walker.Tap("no");
        walker.Order(DxAssistant.Conversation.Messages.CommandWord.Back);
        Assert.Equal(before, Measured(walker));
        Assert.Empty(walker.State.Outdated);
    }

    [Fact]
    public void Verify_NotCuredAgain_IsDoubtedLessEachTime()
    {
        Walker walker = AtVerification();
        walker.Tap("no");
        var once = (Graph.Evidence.RepairFailed)new CaseView(ShippedContent.Library,
            walker.State).Evidence.Single(evidence => evidence is Graph.Evidence.RepairFailed);
        // The setting may be from 0 to 0.5; at 0 or 1 the square would be the same.
        Assert.InRange(once.NotHeld, 0.001, 0.5);
        Assert.Equal(ShippedContent.Library.Settings.NotHeld, once.NotHeld, 12);
        CaseState twice = Fold.Apply(walker.State, new RepairVerified(Repair, Fault, false));
        Assert.Equal(once.NotHeld * once.NotHeld,
            FailedWork.Says(ShippedContent.Library, twice, new RepairId(Repair)).NotHeld, 12);
    }

    [Theory]
    [InlineData("no, it is back after two minutes", false)]
    [InlineData("no, C0 is back", false)]
    [InlineData("yes", true)]
    public void Verify_SaidInWords_IsTaken(string words, bool works)
    {
        Walker walker = AtVerification();
        walker.Say(words);
        Assert.Equal(works, Assert.Single(walker.State.Repairs).Works);
    }

    [Theory]
    [InlineData("still bubbles")]
    [InlineData("it still leaks")]
    [InlineData("i have to do it again")]
    [InlineData("it must be redone")]
    public void Verify_WorkDidNotHold_TheSameRepairComesAgainAndNothingIsRuledOut(string words)
    {
        Walker walker = AtVerification();
        string[] before = [.. Measured(walker)];
        double believed = Belief(walker).ProbabilityOf(new FaultId(Fault));

        walker.Say(words);

        Assert.Equal(before, Measured(walker));
        Assert.Empty(walker.State.Repairs);
        Assert.Equal(believed, Belief(walker).ProbabilityOf(new FaultId(Fault)));
        walker.MakeSafe();
        Assert.Equal((QuestionKind.Repair, Repair), (walker.Question.Kind, walker.Question.Subject));
        walker.Tap("done");
        walker.MakeSafe();
        walker.Tap("yes");
        Assert.Equal(Fault, Assert.Single(walker.State.Repairs).Fault);
    }

    [Theory]
    [InlineData("it did not hold")]
    [InlineData("i have to redo it")]
    [InlineData("redo")]
    public void Verify_RepairThatAnybodyMakes_IsNotRedone(string words)
    {
        Walker walker = new Walker(ShippedContent.Assistant).Begin("brenholt-ws", "owner", "poor-cooling");
        To(walker, "filter-blocked", QuestionKind.Verify);
        Assert.Equal(["yes", "no"], walker.Question.Options.Select(option => option.Key));
        walker.Say(words);
        Assert.Empty(walker.Log.OfType<RepairToRedo>());
    }

    [Theory]
    [InlineData("it did not work")]
    [InlineData("not working")]
    [InlineData("it did not hold")]
    public void Verify_DidNotWork_IsNotCured(string words)
    {
        Walker walker = AtVerification();
        walker.Say(words);
        Assert.False(Assert.Single(walker.State.Repairs).Works);
    }

    [Fact]
    public void Verify_WaterLeaksAgain_IsNotCured()
    {
        Walker walker =
            new Walker(ShippedContent.Assistant).Begin("brenholt-ws", "technician", "water-dripping-indoor");
        To(walker, "drain-blocked", QuestionKind.Verify);
        walker.Say("it still leaks");
        Assert.False(Assert.Single(walker.State.Repairs).Works);
    }

    private static Walker AtVerification()
    {
        Walker walker = new Walker(ShippedContent.Assistant).Begin("brenholt-ws", "refrigerant", "poor-cooling");
        To(walker, Fault, QuestionKind.Verify);
        Assert.Equal(Repair, walker.Question.Subject);
        return walker;
    }

    private static void To(Walker walker, string fault, QuestionKind kind)
    {
        for (int turn = 0; turn < MostTurns && walker.Question.Kind != kind; turn++)
            HiddenFault.Typical(fault).Answer(walker);
        Assert.Equal(kind, walker.Question.Kind);
    }

    private static bool AskedLater(Walker walker, string check)
    {
        var later = new Walker(ShippedContent.Assistant, walker.State);
        for (int turn = 0; turn < MostTurns && later.State.ClosedHow is null; turn++)
        {
            if (later.Question is { Kind: QuestionKind.Check } asked && asked.Subject == check) return true;
            HiddenFault.Typical("restriction-kink").Answer(later);
        }

        return false;
    }

    private static IEnumerable<string> Measured(Walker walker) => walker.State.Results.Select(result => result.Check);

    private static bool Changed(string check) =>
        ShippedContent.Library.Repairs[new RepairId(Repair)].Changes.Contains(new CheckId(check));

    private static Graph.Belief Belief(Walker walker) => new CaseView(ShippedContent.Library, walker.State).Belief;
}
