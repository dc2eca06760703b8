using DxAssistant.Knowledge.Search.Learning;

namespace DxAssistant.Knowledge.Search.Gates;

/// <summary>Whether a message tells of a unit at all, by what the search and the models found.</summary>
/// <remarks>Long messages are seldom idle talk; short ones need words that the pages know.</remarks>
internal static class TradeGate
{
    public static readonly Gate Gate = new(
    [
        ("start", 11.66), ("trade", -1.38), ("off topic", 1.37), ("fit", -0.04), ("sureness", -0.53), ("length", -2.67),
        ("says enough", -1.78), ("other machine", 1.39), ("asks only", 1.71), ("known", -1.26), ("talk-fit", 6.48),
        ("concepts", -0.96), ("unsafe", -0.23),
    ]);

    /// <summary>The signs of a message, in the order of the gate's weights.</summary>
    public static double[] SignsOf(HeardMessage message)
    {
        var (intention, heard) = (message.Intention, message.Hearing);
        return
        [
            1, Logistic.Log(intention.Trade), Logistic.Log(intention.OffTopic), heard.Best, Logistic.Log(heard.Sureness), Math.Log(heard.Words + 1),
            Sign(heard.SaysEnough), Sign(heard.NamesAnotherMachine), Sign(heard.AsksOnly), heard.Known, message.LikenessToTalk - heard.Best, Math.Log(1 + message.Concepts), Logistic.Log(intention.Unsafe),
        ];
    }

    /// <summary>The probability that a message is talk of something else.</summary>
    public static double OfOtherTalk(HeardMessage message) => Gate.Of(SignsOf(message));

    private static double Sign(bool holds) => holds ? 1 : 0;
}
