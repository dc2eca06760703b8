namespace DxAssistant.Knowledge.Search;

/// <summary>Whether a message tells of a unit at all: a logistic regression over what the search and the models found.</summary>
/// <remarks>
/// Its weights were fitted on the development phrases, judged by pages that held none of their wordings. Long messages are
/// seldom idle talk; short ones need words that the pages know.
/// </remarks>
internal static class TradeGate
{
    private const double Start = 10.43;
    private const double PerTrade = -0.53;
    private const double PerOffTopic = 0.52;
    private const double PerFit = -3.24;
    private const double PerSureness = -0.62;
    private const double PerLength = -0.85;
    private const double ForEnough = -3.38;
    private const double ForOtherMachine = 2.35;
    private const double ForPart = 0.3;
    private const double ForQuestion = 3.68;
    private const double PerKnown = -3.86;

    /// <summary>The probability that a message is talk of something else.</summary>
    public static double OfOtherTalk(Intention intention, Hearing heard) => Logistic.Of(
        Start + (PerTrade * Logistic.Log(intention.Trade)) + (PerOffTopic * Logistic.Log(intention.OffTopic)) + (PerFit * heard.Best)
            + (PerSureness * Logistic.Log(heard.Sureness)) + (PerLength * Math.Log(heard.Words + 1))
            + (heard.SaysEnough ? ForEnough : 0) + (heard.NamesAnotherMachine ? ForOtherMachine : 0)
            + (heard.NamesPart ? ForPart : 0) + (heard.AsksOnly ? ForQuestion : 0) + (PerKnown * heard.Known));
}
