using System.Collections.Immutable;
using DxAssistant.Conversation;
using DxAssistant.Conversation.Deciding;
using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.Messages;
using DxAssistant.Conversation.Replies;
using DxAssistant.Graph.Model;
using DxAssistant.Graph.Planning;

namespace DxAssistant.Bot.Tests.Conversation;

/// <summary>"Why" has an answer at every question, and its figures hold together.</summary>
public sealed class WhyTests
{
    // Source: I. J. Good, Probability and the Weighing of Evidence, 1950 (from memory): weights of evidence add to the
    // logarithm of the odds.
    [Theory]
    [InlineData("weak-airflow", "filter-look", "blocked")]
    [InlineData("room-sensor-code", "indoor-sensor-plugs", "home")]
    public void Ledger_AddsUpToTheShareOfNow(string symptom, string check, string outcome)
    {
        Walker walker = new Walker(ShippedContent.Assistant).Begin("brenholt-ws", "technician", symptom);
        Graph.Model.Check page = ShippedContent.Library.Graph.Find(new CheckId(check))!;
        Assert.Contains(new OutcomeId(outcome), page.Outcomes);
        walker.Note(new OutcomeSeen(check, outcome,
            [.. page.Outcomes.Select(one => one == new OutcomeId(outcome) ? 1.0 : 0)], null, outcome));
        ImmutableArray<FaultId> inQuestion =
            [.. new CaseView(ShippedContent.Library, walker.State).Belief.Ranked.Take(3).Select(ranked => ranked.Id)];
        foreach (FaultId fault in inQuestion)
        {
            LedgerFigures ledger = Ledger(walker, fault);
            Assert.Equal(2, ledger.Lines.Length);
            double log = Math.Log(ledger.Start / (1 - ledger.Start)) + ledger.Lines.Sum(line => line.Weight!.Value);
            Assert.Equal(ledger.Probability, 1 / (1 + Math.Exp(-log)), 0.004);
        }
    }

    [Fact]
    public void Share_AfterAResult_IsSaidBesideThatOfTheComplaint()
    {
        Walker walker = new Walker(ShippedContent.Assistant).Begin("brenholt-ws", "technician", "room-sensor-code")
            .MakeSafe();
        walker.Say("why not the room air sensor");
        Assert.Contains(walker.Reply.Segments, segment => segment.From.Contains(new Provenance.Phrase("fault-share")));
        walker.Tap("home");
        walker.Say("why not the room air sensor");
        Assert.Contains(walker.Reply.Segments,
            segment => segment.From.Contains(new Provenance.Phrase("fault-share-since")));
    }

    [Fact]
    public void Answers_TellTheShareBeforeAndAfter()
    {
        Walker walker = new Walker(ShippedContent.Assistant).Begin("brenholt-ws", "technician", "room-sensor-code");
        ImmutableSortedDictionary<string, double> now =
            walker.Reply.Belief.ToImmutableSortedDictionary(line => line.Fault, line => line.Probability);
        WhyFigures why = Figures(walker);
        Assert.All(why.Answers, answer => Assert.Equal(now[answer.Fault], answer.Before, 0.001));
        Assert.Contains(why.Answers, answer => answer.Share > answer.Before);
    }

    // A check after which the step comes whatever it shows is no other way.
    [Fact]
    public void RunnerUp_IsNoMereDelayOfTheStep()
    {
        var chooser = new StepChooser(ShippedContent.Library);
        int delays = 0, others = 0;
        foreach (SymptomId symptom in ShippedContent.Library.Symptoms.Keys)
        {
            Walker walker = new Walker(ShippedContent.Assistant).Begin("tarn-duo", "technician", symptom.Value);
            if (walker.Question.Kind is not (QuestionKind.Check or QuestionKind.Access)) continue;
            var view = new CaseView(ShippedContent.Library, walker.State);
            if (chooser.Walk(view) is not { Plan: var plan }
                || plan.Options.FirstOrDefault(option => IdOf(option.Step) != walker.State.Step!.Id) is not { } first)
                continue;
            WhyFigures why = Figures(walker);
            delays += IdOf(first.Step) == why.RunnerUp ? 0 : 1;
            if (plan.Options.FirstOrDefault(option =>
                IdOf(option.Step) == why.RunnerUp)?.Step is not PlannedStep.DoCheck check)
                continue;
            Assert.Contains(chooser.Foresee(view, check), prospect => prospect.Next?.Id != why.Step);
            others++;
        }

        Assert.True(others > 10, $"{others} runners-up were checks");
        Assert.True(delays > 0, "nothing was passed over");
    }

    [Fact]
    public void Trial_AskedWhy_SaysThatARepairCountsThen()
    {
        Walker walker = AtTrial();
        Assert.Contains("why-trial", Why(walker));
        walker.Tap("yes");
        Assert.Equal(QuestionKind.LeftOver, walker.Question.Kind);
        Assert.Contains("why-left-over", Why(walker));
    }

    [Fact]
    public void End_AskedWhy_TellsTheLikeliestFaultsWithTheirLedgers()
    {
        Walker walker = new Walker(ShippedContent.Assistant).Begin("brenholt-ws", "technician", "room-sensor-code");
        walker.Order(CommandWord.StopHere);
        Assert.NotNull(walker.State.ClosedHow);
        Assert.Contains("why-closed", Why(walker));
        Assert.NotEmpty(walker.Reply.Segments.Select(segment => segment.Ledger).OfType<LedgerFigures>());
    }

    private static Walker AtTrial()
    {
        Walker walker = new Walker(ShippedContent.Assistant).Begin("brenholt-ws", "technician", "room-sensor-code")
            .MakeSafe();
        walker.Tap("loose");
        walker.Tap("done");
        return walker.MakeSafe();
    }

    private static string[] Why(Walker walker) =>
        [.. walker.Order(CommandWord.Why).Segments.SelectMany(segment => segment.From).OfType<Provenance.Phrase>()
            .Select(phrase => phrase.Id)];

    private static WhyFigures Figures(Walker walker) =>
        Assert.Single(walker.Order(CommandWord.Why).Segments.Select(segment => segment.Why).OfType<WhyFigures>());

    private static LedgerFigures Ledger(Walker walker, FaultId fault)
    {
        walker.Say($"why not {ShippedContent.Library.Faults[fault].Title.Text}");
        return Assert.Single(walker.Reply.Segments.Select(segment => segment.Ledger).OfType<LedgerFigures>());
    }

    private static string IdOf(PlannedStep step) => step switch
    {
        PlannedStep.DoCheck check => check.Check.Value,
        PlannedStep.DoRepair repair => repair.Repair.Value,
        _ => "",
    };
}
