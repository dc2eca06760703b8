using System.Collections.Immutable;
using System.Globalization;
using System.Text.Json;
using DxAssistant.Conversation;
using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.Messages;
using DxAssistant.Conversation.Sheets;
using DxAssistant.Conversation.State;
using DxAssistant.Graph.Model;
using DxAssistant.Graph.Testability;
using DxAssistant.Server.Simulating;

namespace DxAssistant.Bot.Tests.Load;

/// <summary>Plays hidden faults through the conversation and writes down what a client would have sent.</summary>
internal sealed class WalkRecorder(Assistant assistant)
{
    private const int MostTurns = 60;

    /// <summary>
    /// Whole conversations from the first words to the end, of all series, symptoms and people, in an order drawn by
    /// the seed.
    /// </summary>
    public ImmutableArray<ImmutableArray<RecordedTurn>> Record(int walks, int seed)
    {
        var random = new Random(seed);
        SimulatedCase[] cases =
            [.. SimulatedCases.Draw(assistant.Library, new SimulationOrder(1, (ulong)seed, null, null, null))];
        random.Shuffle(cases);
        return Record([.. cases.Take(walks)]);
    }

    /// <summary>
    /// The same, each complaint as often as the pages say that faults come up and show it: common ones many times, with
    /// other readings each time.
    /// </summary>
    public ImmutableArray<ImmutableArray<RecordedTurn>> RecordAsTheyComeUp(int walks, int seed)
    {
        var order = new SimulationOrder(1, (ulong)seed, null, null, null);
        var draws = new Draws((ulong)seed);
        var causes = new CauseDraws(assistant.Library);
        var plays = new PlayDraws(assistant.Library, order, causes);
        SimulatedCase[] kinds = [.. SimulatedCases.Draw(assistant.Library, order)];
        double[] weights =
            [.. kinds.Select(kind => causes.Of(assistant.Library.Graph.Find(new SymptomId(kind.Symptom))!, kind.Series)
                .Sum(cause => cause.Value * assistant.Library.Graph.Find(cause.Key)!.Weight))];
        return Record([.. Enumerable.Range(0, walks).Select(_ => kinds[draws.NextPlace(weights)])
            .Select(kind => plays.Play(Anew(kind, causes, draws), draws))]);
    }

    private SimulatedCase Anew(SimulatedCase kind, CauseDraws causes, Draws draws) => new(
        kind.Symptom, kind.Series, kind.Role,
        causes.Draw(assistant.Library.Graph.Find(new SymptomId(kind.Symptom))!, kind.Series, draws)!, draws.Next());

    private ImmutableArray<ImmutableArray<RecordedTurn>> Record(SimulatedCase[] cases)
    {
        var recorded = new ImmutableArray<RecordedTurn>[cases.Length];
        Parallel.For(0, recorded.Length, place => recorded[place] = Record(cases[place]));
        return [.. recorded];
    }

    private ImmutableArray<RecordedTurn> Record(SimulatedCase simulated)
    {
        var unit = new HiddenUnit(assistant.Library, simulated);
        var turns = ImmutableArray.CreateBuilder<RecordedTurn>();
        CaseState state = assistant.Take(CaseState.New, new Message("opening", new MessageBody.Opening())).After!;
        while (turns.Count < MostTurns && state is { ClosedHow: null, Question: { } question })
        {
            var body = unit.Answer(question);
            string turnId = string.Create(CultureInfo.InvariantCulture, $"t{turns.Count + 1}");
            var turn = assistant.Take(state, new Message(turnId, body));
            turns.Add(new RecordedTurn(Posted(turnId, body), turnId, [.. turn.Events.Select(Text)]));
            state = turn.After!;
        }

        return turns.ToImmutable();
    }

    private static string Text(CaseEvent happened) =>
        JsonSerializer.Serialize(happened, ConversationJson.Default.CaseEvent);

    private static string Posted(string turnId, MessageBody body) => JsonSerializer.Serialize(body switch
    {
        MessageBody.Words words => new { turnId, text = words.Text },
        MessageBody.Choice choice => Answered(turnId, new { choice = choice.Key }),
        MessageBody.Command command => Answered(turnId, new { command = CommandNames.Name(command.Word) }),
        MessageBody.Readings readings =>
            Answered(turnId,
                new { readings = readings.Fields.ToDictionary(field => field.Label, field => field.Words) }),
        _ => throw new ArgumentException($"nobody posts {body.GetType().Name}", nameof(body)),
    });

    private static object Answered(string turnId, object answer) => new { turnId, answer };
}
