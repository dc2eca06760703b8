using System.Text.Json;
using DxAssistant.Conversation;
using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.Messages;
using DxAssistant.Conversation.State;

namespace DxAssistant.Bot.Tests.Conversation;

public sealed class KnownTurnsTests
{
    private static readonly MessageBody[] Talk =
    [
        new MessageBody.Opening(), new MessageBody.Words("the unit does not heat"),
        new MessageBody.Choice(null, "brenholt-ws"), new MessageBody.Choice(null, "technician"),
        new MessageBody.Command(CommandWord.Why), new MessageBody.Command(CommandWord.Back),
        new MessageBody.Choice("q3", "owner"), new MessageBody.Words("fan is loud"),
    ];

    private readonly Assistant assistant = new(ShippedContent.Library);

    [Fact]
    public void Take_SameWayAgain_GivesTheSameEventsUnderItsOwnName()
    {
        Turn[] first = [.. Walk(assistant, "a", "ann")], again = [.. Walk(assistant, "b", "ben")], anew =
            [.. Walk(new Assistant(ShippedContent.Library), "b", "ben")];
        Assert.All(first.Zip(again), turns => Assert.Same(turns.First.After, turns.Second.After));
        Assert.Equal(anew.Select(Text), again.Select(Text));
        Assert.NotEqual(first.Select(Text), again.Select(Text));
    }

    [Fact]
    public void Take_AnyTurn_EndsInTheFoldOfItsEvents()
    {
        CaseState state = CaseState.New;
        foreach (Turn turn in Walk(assistant, "a", "ann"))
        {
            state = Fold.Apply(state, turn.Events);
            Assert.Equal(JsonSerializer.Serialize(state), JsonSerializer.Serialize(turn.After));
        }
    }

    [Fact]
    public void Take_WhatIsSaidDiffers_IsWorkedOut()
    {
        CaseState open = Walk(assistant, "a", "ann").First().After!;
        MessageBody[] others =
        [
            new MessageBody.Words("fan"), new MessageBody.Words("fan", "q1"), new MessageBody.Words("Fan"),
            new MessageBody.Choice(null, "fan"), new MessageBody.Choice("", "fan"),
            new MessageBody.Readings(null, [new FilledField("a", "b"), new FilledField("c", "d")]),
            new MessageBody.Readings(null, [new FilledField("a", "b1:c1:d")]),
            new MessageBody.Readings(null, []), new MessageBody.Command(CommandWord.Skip), new MessageBody.Opening(),
        ];
        Turn[] turns = [.. others.Select(body => assistant.Take(open, new Message("t", body)))];
        Assert.Equal(others.Length, turns.Select(turn => turn.After).Distinct(ReferenceEqualityComparer.Instance)
            .Count());
        Assert.All(others.Zip(turns), pair => Assert.Same(pair.First, pair.Second.Events.OfType<Said>().Single().Body));
    }

    private static IEnumerable<Turn> Walk(Assistant assistant, string name, string by)
    {
        CaseState state = CaseState.New;
        for (int place = 0; place < Talk.Length; place++)
        {
            Turn turn = assistant.Take(state, new Message($"{name}{place}", Talk[place], by));
            state = turn.After!;
            yield return turn;
        }
    }

    private static string Text(Turn turn) =>
        string.Join('\n',
            turn.Events.Select(happened => JsonSerializer.Serialize(happened, ConversationJson.Default.CaseEvent)));
}
