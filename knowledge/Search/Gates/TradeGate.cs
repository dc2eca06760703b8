using DxAssistant.Knowledge.Search.Learning;

namespace DxAssistant.Knowledge.Search.Gates;

/// <summary>Whether a message tells of a unit at all, by what the search and the models found.</summary>
/// <remarks>Long messages are seldom idle talk; short ones need words that the pages know.</remarks>
internal static class TradeGate
{
    public static readonly Gate Gate = new(
    [
        ("start", 13.26), ("trade", -1.15), ("off topic", 0.56), ("fit", -3.44), ("sureness", -0.68),
        ("length", -0.89), ("says enough", -3.88), ("other machine", 1.65), ("asks only", 6.35), ("known", -5),
        ("talk-fit", 4.88), ("concepts", -0.57), ("unsafe", -0.18), ("names ours", -1.45), ("harmless", 0.15),
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
            Sign(OffTopicTalk.NamesOurs(message.Request)), Logistic.Log(intention.Harmless),
        ];
    }

    /// <summary>The probability that a message is talk of something else.</summary>
    public static double OfOtherTalk(HeardMessage message) => Gate.Of(SignsOf(message));

    private static double Sign(bool holds) => holds ? 1 : 0;
}
