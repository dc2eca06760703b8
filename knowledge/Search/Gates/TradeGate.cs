using DxAssistant.Knowledge.Search.Learning;

namespace DxAssistant.Knowledge.Search.Gates;

/// <summary>Whether a message tells of a unit at all, by what the search and the models found.</summary>
/// <remarks>Long messages are seldom idle talk; short ones need words that the pages know.</remarks>
internal static class TradeGate
{
    public static readonly Gate Gate = new(
    [
        ("start", 12.01), ("trade", -3.01), ("off topic", 0.47), ("fit", -3.29), ("sureness", -0.43), ("length", -1.64),
        ("says enough", -2.5), ("other machine", 2.51), ("asks only", 2.46), ("known", -4.42), ("talk-fit", 5.55),
        ("concepts", -0.75), ("unsafe", -0.11), ("names ours", -2.41),
    ]);

    /// <summary>The signs of a message, in the order of the gate's weights.</summary>
    public static double[] SignsOf(HeardMessage message)
    {
        var (intention, heard) = (message.Intention, message.Hearing);
        return
        [
            1, Logistic.Log(intention.Trade), Logistic.Log(intention.OffTopic), heard.Best,
            Logistic.Log(heard.Sureness), Math.Log(heard.Words + 1),
            Sign(heard.SaysEnough), Sign(heard.NamesAnotherMachine), Sign(heard.AsksOnly), heard.Known,
            message.LikenessToTalk - heard.Best, Math.Log(1 + message.Concepts), Logistic.Log(intention.Unsafe),
            Sign(OffTopicTalk.NamesOurs(message.Request)),
        ];
    }

    /// <summary>The probability that a message is talk of something else.</summary>
    public static double OfOtherTalk(HeardMessage message) => Gate.Of(SignsOf(message));

    private static double Sign(bool holds) => holds ? 1 : 0;
}
