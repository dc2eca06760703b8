namespace DxAssistant.Knowledge.Search;

/// <summary>Whether a message tells of a unit at all: a logistic regression over what the search and the models found.</summary>
/// <remarks>
/// Its weights were fitted on the wordings of the pages, each judged by an index that did not hold it. Long messages are
/// seldom idle talk; short ones need words that the pages know.
/// </remarks>
internal static class TradeGate
{
    private const double Start = 6.8;
    private const double PerTrade = -0.84;
    private const double PerOffTopic = 0.71;
    private const double PerFit = -1.4;
    private const double PerSureness = -0.31;
    private const double PerLength = -2.31;
    private const double ForEnough = -1.12;
    private const double ForOtherMachine = 0.39;

    /// <summary>The least probability that counts.</summary>
    private const double Floor = 1e-4;

    /// <summary>The probability that a message is talk of something else.</summary>
    /// <param name="best">How well the best fault or symptom fits.</param>
    /// <param name="sureness">The probability of the likeliest fault among all.</param>
    /// <param name="words">How many words the message has.</param>
    public static double OfOtherTalk(Intention intention, double best, double sureness, int words, bool saysEnough, bool namesAnotherMachine)
    {
        var odds = Start + (PerTrade * Log(intention.Trade)) + (PerOffTopic * Log(intention.OffTopic)) + (PerFit * best)
            + (PerSureness * Log(sureness)) + (PerLength * Math.Log(words + 1))
            + (saysEnough ? ForEnough : 0) + (namesAnotherMachine ? ForOtherMachine : 0);
        return 1 / (1 + Math.Exp(-odds));
    }

    private static double Log(double probability) => Math.Log(Math.Max(probability, Floor));
}
