using System.Collections.Immutable;
using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.Messages;
using DxAssistant.Conversation.Replies;
using DxAssistant.Conversation.State;
using DxAssistant.Graph.Model;

namespace DxAssistant.Bot.Tests.Conversation;

/// <summary>A unit with one fault in it, answering each question as such a unit does.</summary>
/// <param name="Pick">Chooses an outcome from the check's row for the fault.</param>
internal sealed record HiddenFault(FaultId Fault, Func<ImmutableArray<double>, int> Pick)
{
    private const int MostTurns = 250;

    /// <summary>A unit that always shows what its fault shows most often.</summary>
    public static HiddenFault Typical(string fault) => new(new FaultId(fault), row => row.IndexOf(row.Max()));

    /// <summary>A unit that shows each outcome as often as its fault does.</summary>
    public static HiddenFault Drawn(FaultId fault, Random random) => new(fault, row =>
    {
        double at = random.NextDouble();
        int outcome = 0;
        while (outcome < row.Length - 1 && (at -= row[outcome]) > 0) outcome++;
        return outcome;
    });

    /// <summary>Answers until the case is closed or nothing more is to be answered.</summary>
    public WalkRecord Walk(Walker walker)
    {
        var steps = ImmutableArray.CreateBuilder<string>();
        for (int turn = 0; turn < MostTurns && walker.State.ClosedHow is null; turn++)
        {
            if (walker.Question.Kind is QuestionKind.Check or QuestionKind.Repair) steps.Add(walker.Question.Subject);
            Answer(walker);
        }

        return new WalkRecord(steps.ToImmutable(), walker.State);
    }

    /// <summary>Answers the open question.</summary>
    public void Answer(Walker walker)
    {
        OpenQuestion question = walker.Question;
        switch (question.Kind)
        {
            case QuestionKind.Access: walker.MakeSafe(); break;
            case QuestionKind.Check: walker.Tap(Outcome(question)); break;
            case QuestionKind.Contradiction: walker.Tap("keep"); break;
            case QuestionKind.Repair: walker.Tap("done"); break;
            case QuestionKind.Verify: walker.Tap(Cures(question) ? "yes" : "no"); break;
            case QuestionKind.LeftOver: walker.Tap("none"); break;
            default: walker.Tap(question.Options[0].Key); break;
        }
    }

    private string Outcome(OpenQuestion question)
    {
        Check check = ShippedContent.Library.Graph.Find(new CheckId(question.Subject))!;
        return check.Outcomes[Pick(check.Row(Fault))].Value;
    }

    private bool Cures(OpenQuestion question) =>
        ShippedContent.Library.Graph.Find(new RepairId(question.Subject))!.Fixes.Contains(Fault);
}
