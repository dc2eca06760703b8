using System.Text.Json.Nodes;
using DxAssistant.Bot.Tests.Conversation;
using DxAssistant.Bot.Tests.Load;
using DxAssistant.Cases.Log;
using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.Messages;

namespace DxAssistant.Bot.Tests.Cases;

public sealed class OwnWordsTests
{
    // What is not looked through must hold none: else people's words would stand in what is hashed, and stay there for
    // good.
    [Fact]
    public void MayBeIn_WherePlacesAreFound_IsTrue()
    {
        string[] walked = [.. new WalkRecorder(ShippedContent.Assistant).Record(4, seed: 4).SelectMany(walk => walk)
            .SelectMany(turn => turn.Events)];
        string[] written = [.. Written.Select(EventJson.Write)];

        Assert.All(walked.Concat(written), json =>
            Assert.True(OwnWords.MayBeIn(EventJson.Read(json)) || !OwnWords.In(JsonNode.Parse(json)!).Any(), json));
        Assert.All(written, json => Assert.NotEmpty(OwnWords.In(JsonNode.Parse(json)!)));
        Assert.Contains(walked, json => !OwnWords.MayBeIn(EventJson.Read(json)));
    }

    private static CaseEvent[] Written =>
    [
        new Said("t1", "ann", new MessageBody.Words("call me")), new SymptomReported("fan", 1, "it hums"),
        new RepairTriedBefore("fan", "fan", "changed the fan"), new NoteWritten("ask Tam", "ann"),
    ];
}
