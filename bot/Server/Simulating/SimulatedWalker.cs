using System.Collections.Immutable;
using System.Globalization;
using DxAssistant.Conversation;
using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.Messages;
using DxAssistant.Conversation.Replies;
using DxAssistant.Conversation.State;
using DxAssistant.Graph.Model;
using DxAssistant.Knowledge.Content;

namespace DxAssistant.Server.Simulating;

/// <summary>Plays a hidden fault through the conversation itself.</summary>
internal sealed class SimulatedWalker(Assistant assistant)
{
    private const int MostTurns = 400;

    public SimulatedWalk Walk(SimulatedCase simulated)
    {
        var unit = new HiddenUnit(assistant.Library, simulated);
        var clock = new WalkClock(assistant.Library);
        var steps = ImmutableArray.CreateBuilder<string>();
        CaseState state = Take(CaseState.New, new MessageBody.Opening(), clock);
        for (int turn = 0; turn < MostTurns && state is { ClosedHow: null, Question: { } question }; turn++)
        {
            if (question.Kind is QuestionKind.Check or QuestionKind.Repair) steps.Add(question.Subject);
            state = Take(state, unit.Answer(question), clock);
        }

        return new SimulatedWalk(simulated, EndOf(unit, simulated.Role, state), steps.ToImmutable(), clock.Minutes,
            clock.Checks, clock.WrongParts,
            Names(state, unit.Fault));
    }

    private CaseState Take(CaseState state, MessageBody body, WalkClock clock)
    {
        Turn turn = assistant.Take(state, new Message(state.Turns.ToString(CultureInfo.InvariantCulture), body));
        foreach (CaseEvent happened in turn.Events) clock.Count(happened);
        return Fold.Apply(state, turn.Events);
    }

    // A sentence names a fault when its title stands in it.
    private bool Names(CaseState state, FaultId fault)
    {
        string page = assistant.Library.Faults[fault].Title.Place.Path;
        return state.LastReply?.Segments.Any(segment => segment.From.OfType<Provenance.Page>()
            .Any(from => from.Path == page)) == true;
    }

    private WalkEnd EndOf(HiddenUnit unit, string role, CaseState state)
    {
        FaultId fault = unit.Fault;
        return state.ClosedHow switch
        {
            "repaired" => unit.HasMore ? WalkEnd.Missed : WalkEnd.Proven,
            "watch" => fault == FaultId.NoneOfThese ? WalkEnd.Proven : WalkEnd.Missed,
            "book" => CanRepair(role, fault) && !IsStopped(role, state) ? WalkEnd.BookedForNothing : WalkEnd.Booked,
            _ => WalkEnd.Stuck,
        };
    }

    // Signs of danger, or not knowing of them, end the walk of somebody who is no technician, whatever is wrong.
    private bool IsStopped(string role, CaseState state) => Person(role).Rank == 0
        && assistant.Library.Checks.Values.Any(page => !page.Stop.IsEmpty
            && (state.PassedOver.ContainsKey(page.Id.Value)
                || state.Results.Any(result => result.Check == page.Id.Value
                    && page.Stop.Any(sign => sign.Value == result.Outcome))));

    private Role Person(string role) => assistant.Library.Roles.First(page => page.Role.Id == role).Role;

    private bool CanRepair(string role, FaultId fault)
    {
        Library library = assistant.Library;
        Role person = Person(role);
        return fault != FaultId.NoneOfThese && library.Graph.RepairsOf(fault)
            .Any(repair => person.May(repair.Who) && !library.Repairs[repair.Id].LeftToOthers);
    }
}
