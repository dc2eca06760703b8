using DxAssistant.Conversation.Replies;
using DxAssistant.Server.Channels;

namespace DxAssistant.Bot.Tests.Server;

public sealed class PlainReplyTests
{
    [Fact]
    public void Lines_CautionsOfOnePage_StandTogetherBeforeTheSteps()
    {
        var reply = new Reply(
            [
                Caution("mains", "Mains can kill."), Caution("mains", "Switch it off."),
                Caution("charge", "It holds a charge."),
                Plain(SegmentKind.Instruction, "Pull the plug."), Plain(SegmentKind.Instruction, "Measure."),
            ],
            null, [], null);

        Assert.Equal(
            [
                "! CAUTION: Mains can kill.", "    - Switch it off.", "! CAUTION: It holds a charge.",
                "1. Pull the plug.", "2. Measure.",
            ],
            PlainReply.Lines(reply).ToArray());
    }

    [Fact]
    public void Lines_OpenFields_SayUnitAndPlace()
    {
        var reply = new WalkResponder()
            .Respond([], new("t", new DxAssistant.Conversation.Messages.MessageBody.Words("x"))).Reply;

        Assert.Equal("- U–V in Ω: Leads on U and V", PlainReply.Lines(reply)[^1]);
    }

    private static Segment Caution(string page, string text) =>
        new(SegmentKind.Caution, text, [new Provenance.Page($"cautions/{page}.md", "Danger")]);

    private static Segment Plain(SegmentKind kind, string text) => new(kind, text, [new Provenance.Person()]);
}
