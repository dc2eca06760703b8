using System.Text.Json;
using DxAssistant.Bot.Tests.Conversation;
using DxAssistant.Bot.Tests.Load;
using DxAssistant.Cases.Log;
using DxAssistant.Conversation;
using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.Messages;
using DxAssistant.Conversation.Replies;

namespace DxAssistant.Bot.Tests.Cases;

public sealed class EventJsonTests
{
    // What is hashed and what is read back by any program is one and the same text.
    [Fact]
    public void Write_AllThatHappens_IsInTheOneForm()
    {
        CaseEvent[] walked = [.. new WalkRecorder(ShippedContent.Assistant).Record(3, seed: 11).SelectMany(walk => walk)
            .SelectMany(turn => turn.Events).Select(EventJson.Read)];
        CaseEvent[] odd =
        [
            new Said("t", "ann", new MessageBody.Words("é \u2028 \ud83d\ude00 <b>&'\"\\/\u0001")),
            new SymptomReported("fan", 0.1 + 0.2, "ü", true),
            new Replied(new Reply([new Segment(SegmentKind.Notice, "«½» 'a'", [new Provenance.Phrase("x")])], null,
                [new BeliefLine("a", "ä", 1e-7)], "b")),
        ];
        Assert.All(walked.Concat(odd), happened =>
        {
            string text = EventJson.Write(happened);
            Assert.Equal(CanonicalJson.Of(text), text);
            Assert.Equal(JsonSerializer.Serialize(happened, ConversationJson.Default.CaseEvent), text);
            string veiled = Veil.Draw(happened).Body;
            Assert.Equal(CanonicalJson.Of(veiled), veiled);
        });
    }

    // As programs wrote it before anything was carried over; its hash stands in their logs.
    [Theory]
    [InlineData("""{"event":"second-fault-begun"}""")]
    [InlineData("""{"event":"second-fault-begun","carried":{"check":"wheel-look","results":["wheel-look"]}}""")]
    public void Read_SecondFaultBegun_IsWrittenAsItWasRead(string text) =>
        Assert.Equal(text, EventJson.Write(EventJson.Read(text)));
}
