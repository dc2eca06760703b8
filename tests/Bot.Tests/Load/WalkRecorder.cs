using System.Collections.Immutable;
using System.Globalization;
using System.Text.Json;
using DxAssistant.Conversation;
using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.Messages;
using DxAssistant.Conversation.Sheets;
using DxAssistant.Conversation.State;
using DxAssistant.Server.Simulating;

namespace DxAssistant.Bot.Tests.Load;

/// <summary>Plays hidden faults through the conversation and writes down what a client would have sent.</summary>
internal sealed class WalkRecorder(Assistant assistant)
{
    private const int MostTurns = 60;

    /// <summary>Whole conversations from the first words to the end, of all series, symptoms and people, in an order drawn by the seed.</summary>
    public ImmutableArray<ImmutableArray<RecordedTurn>> Record(int walks, int seed)
    {
        var random = new Random(seed);
        SimulatedCase[] cases = [.. SimulatedCases.Draw(assistant.Library, new SimulationOrder(1, (ulong)seed, null, null, null))];
        random.Shuffle(cases);
        var recorded = new ImmutableArray<RecordedTurn>[Math.Min(walks, cases.Length)];
        Parallel.For(0, recorded.Length, place => recorded[place] = Record(cases[place]));
        return [.. recorded];
    }

    private ImmutableArray<RecordedTurn> Record(SimulatedCase simulated)
    {
        var unit = new HiddenUnit(assistant.Library, simulated);
        var turns = ImmutableArray.CreateBuilder<RecordedTurn>();
        CaseState state = Fold.Apply(CaseState.New, assistant.Take(CaseState.New, new Message("opening", new MessageBody.Opening())).Events);
        while (turns.Count < MostTurns && state is { ClosedHow: null, Question: { } question })
        {
            var body = unit.Answer(question);
            string turnId = string.Create(CultureInfo.InvariantCulture, $"t{turns.Count + 1}");
            var events = assistant.Take(state, new Message(turnId, body)).Events;
            turns.Add(new RecordedTurn(Posted(turnId, body), turnId, [.. events.Select(Text)]));
            state = Fold.Apply(state, events);
        }

        return turns.ToImmutable();
    }

    private static string Text(CaseEvent happened) => JsonSerializer.Serialize(happened, ConversationJson.Default.CaseEvent);

    private static string Posted(string turnId, MessageBody body) => JsonSerializer.Serialize(body switch
    {
        MessageBody.Words words => new { turnId, text = words.Text },
        MessageBody.Choice choice => Answered(turnId, new { choice = choice.Key }),
        MessageBody.Command command => Answered(turnId, new { command = CommandNames.Name(command.Word) }),
        MessageBody.Readings readings => Answered(turnId, new { readings = readings.Fields.ToDictionary(field => field.Label, field => field.Words) }),
        _ => throw new ArgumentException($"nobody posts {body.GetType().Name}", nameof(body)),
    });

    private static object Answered(string turnId, object answer) => new { turnId, answer };
}
