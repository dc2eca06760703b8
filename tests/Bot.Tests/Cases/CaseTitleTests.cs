using DxAssistant.Cases;
using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.Messages;

namespace DxAssistant.Bot.Tests.Cases;

public sealed class CaseTitleTests
{
    [Fact]
    public void Of_Words_AreTheTitle() =>
        Assert.Equal("fan dead", CaseTitle.Of([Said(new MessageBody.Words("  fan dead "))]));

    [Fact]
    public void Of_TapsAndTheOpening_GiveNone()
    {
        Assert.Null(CaseTitle.Of([Said(new MessageBody.Opening()), new Opened("v1")]));
        Assert.Null(CaseTitle.Of([Said(new MessageBody.Choice("q1", "yes"))]));
        Assert.Null(CaseTitle.Of([Said(new MessageBody.Words("  "))]));
    }

    [Fact]
    public void Of_LongWords_AreCutBetweenCharacters()
    {
        string title = CaseTitle.Of([Said(new MessageBody.Words(new string('x', 78) + "🔧🔧🔧"))])!;

        Assert.Equal(new string('x', 78) + "…", title);
    }

    private static Said Said(MessageBody body) => new("t", "technician", body);
}
