using DxAssistant.Conversation.Messages;
using DxAssistant.Conversation.Replies;

namespace DxAssistant.Bot.Tests.Conversation;

/// <summary>
/// Who wants to stop is heard at any question but one about danger, and one about a repair that was made.
/// </summary>
public sealed class StopHereTests
{
    [Fact]
    public void StopHere_NothingTold_ClosesWithoutSuspects()
    {
        Walker walker = new(ShippedContent.Assistant);
        walker.Send(new MessageBody.Opening());
        Assert.Equal(["closed-left", "closed-book-owner"], Ends(walker.Order(CommandWord.StopHere)));
        Assert.NotNull(walker.State.ClosedHow);
    }

    [Fact]
    public void StopHere_AfterTakingBack_Closes()
    {
        Walker walker = Walks.Scenes.FanCode();
        walker.Order(CommandWord.Back);
        Assert.Contains("closed-left", Ends(walker.Order(CommandWord.StopHere)));
        Assert.NotNull(walker.State.ClosedHow);
    }

    private static IEnumerable<string> Ends(Reply reply) =>
        reply.Segments.SelectMany(segment => segment.From).OfType<Provenance.Phrase>()
        .Select(phrase => phrase.Id).Where(id => id.StartsWith("closed-", StringComparison.Ordinal));
}
