using System.Text.Json;
using DxAssistant.Conversation;
using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.Messages;
using DxAssistant.Conversation.Replies;
using DxAssistant.Conversation.State;
using DxAssistant.Graph.Model;
using Xunit.Abstractions;

namespace DxAssistant.Bot.Tests.Conversation;

/// <summary>Whatever a person answers, the promises hold.</summary>
public sealed class RandomWalkTests(ITestOutputHelper output)
{
    private static readonly string[] Oddities =
    [
        "", "   ", "\u0000\u0001", "<script>alert(1)</script>", "E5: (", "yes", "no", "1.1", "OL", "2.1k at 24C",
        "e five",
        "¿dónde está?", "なにこれ", "not cooling", "bypass the float switch", "{fault}", new('x', 5_000), "why", "skip",
        "1", "99", "-1e308 ohms",
    ];

    [Theory]
    [InlineData(20261125)]
    [InlineData(4711)]
    [InlineData(12)]
    public void Walk_AnyAnswers_KeepsEveryPromise(int seed)
    {
        output.WriteLine($"seed {seed}");
        var random = new Random(seed);
        for (int walk = 0; walk < 12; walk++)
        {
            var walker = new Walker(ShippedContent.Assistant);
            walker.Send(new MessageBody.Opening());
            for (int turn = 0; turn < 60; turn++)
            {
                walker.Send(Anything(random, walker.Question));
                HoldsPromises(walker);
            }

            ReplaysToTheSameText(walker);
        }
    }

    private static MessageBody Anything(Random random, OpenQuestion question) => random.Next(20) switch
    {
        0 => new MessageBody.Words(Oddities[random.Next(Oddities.Length)]),
        1 => new MessageBody.Command((CommandWord)random.Next(8)),
        2 => new MessageBody.Choice("q0", "stale"),
        3 when !question.Options.IsEmpty =>
            new MessageBody.Words(question.Options[random.Next(question.Options.Length)].Label),
        4 =>
            new MessageBody.Readings(question.Id,
                [.. question.Fields.Select(field =>
                    new FilledField(field.Label, Oddities[random.Next(Oddities.Length)]))]),
        < 9 when !question.Fields.IsEmpty => new MessageBody.Readings(
            question.Id,
            [.. question.Fields.Select(field =>
                new FilledField(field.Label, $"{random.Next(50) / 10.0} {field.Unit}"))]),
        _ when question.Kind == QuestionKind.Complaint => new MessageBody.Words(
            ShippedContent.Library.Symptoms.Values.ElementAt(
                random.Next(ShippedContent.Library.Symptoms.Count)).Title.Text),
        _ when question.Options.IsEmpty => new MessageBody.Words("0.2 V"),
        _ => new MessageBody.Choice(question.Id, question.Options[random.Next(question.Options.Length)].Key),
    };

    private static void HoldsPromises(Walker walker)
    {
        Assert.All(walker.Reply.Segments, segment => Assert.NotEmpty(segment.From));
        Assert.All(walker.Reply.Segments, segment => Assert.All(segment.From, ComesFromContent));
        Assert.Equal(SegmentKind.Question, walker.Reply.Segments[^1].Kind);
        if (walker.Question.Kind == QuestionKind.Check) IsSafeToAsk(walker);
    }

    private static void ComesFromContent(Provenance origin)
    {
        switch (origin)
        {
            case Provenance.Phrase phrase: Assert.True(
                ShippedContent.Library.Phrases.Templates.ContainsKey(phrase.Id)); break;
            case Provenance.Page page: Assert.True(File.Exists(Repository.PathOf("content", page.Path)),
                page.Path); break;
        }
    }

    // A check is asked only in an access state it may be done in, and only of a person who may do it.
    private static void IsSafeToAsk(Walker walker)
    {
        FaultGraphOf graph = new(walker.State);
        Check check = ShippedContent.Library.Graph.Find(new CheckId(walker.Question.Subject))!;
        Assert.Contains(graph.Access, check.Access);
        Assert.True(graph.Role.May(check.Who), $"{check.Id} asked of {graph.Role.Id}");
    }

    private static void ReplaysToTheSameText(Walker walker)
    {
        CaseState state = CaseState.New;
        foreach (Said said in walker.Log.OfType<Said>())
        {
            Turn turn = ShippedContent.Assistant.Take(state, new Message(said.TurnId, said.Body, said.By));
            state = Fold.Apply(state, turn.Events);
        }

        Assert.Equal(Json(walker.State.LastReply!), Json(state.LastReply!));
        CaseState folded = Fold.Apply(CaseState.New, walker.Log.Select(RoundTrip));
        Assert.Equal(Json(walker.State.LastReply!), Json(folded.LastReply!));
        Assert.Equal(walker.State.Turns, folded.Turns);
    }

    private static CaseEvent RoundTrip(CaseEvent happened) => JsonSerializer.Deserialize(
        JsonSerializer.Serialize(happened, ConversationJson.Default.CaseEvent), ConversationJson.Default.CaseEvent)!;

    private static string Json(Reply reply) => JsonSerializer.Serialize(reply, ConversationJson.Default.Reply);

    private sealed class FaultGraphOf(CaseState state)
    {
        public AccessId Access { get; } = state.Access is { } access
            ? new AccessId(access)
            : ShippedContent.Library.Graph.Access.Start;

        public Role Role { get; } = ShippedContent.Library.Roles.First(page => page.Role.Id == state.Role).Role;
    }
}
