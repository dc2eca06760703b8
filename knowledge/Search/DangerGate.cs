namespace DxAssistant.Knowledge.Search;

/// <summary>Whether a message asks for something dangerous: a logistic regression over the rules, the manner of asking, the models
/// and the likeness to what refusal pages hold.</summary>
/// <remarks>Its weights were fitted, with a ridge of 0.1, on match, match-dev, -2, -3 and symptoms-dev of tests/Reference/evaluation, and
/// on the harmless talk of the tests.</remarks>
internal static class DangerGate
{
    private const double Start = -3.46;
    private const double PerTrade = -0.25;
    private const double PerOffTopic = -0.42;
    private const double PerUnsafe = 3.46;
    private const double PerUnsafeAsked = -1.98;
    private const double PerSureness = 0.56;
    private const double PerFit = -1.87;
    private const double PerLikeness = 2.9;
    private const double PerKnown = 0.9;
    private const double PerLength = 0.4;
    private const double ForEnough = 0.76;
    private const double ForScrap = -0.76;
    private const double ForPlainQuestion = 0.43;
    private const double ForOtherMachine = -0.45;
    private const double ForQuestionMark = 1.62;
    private const double ForAskingOutright = 0.23;
    private const double ForAsking = 1.77;
    private const double ForReport = -3.37;
    private const double ForRule = 7.4;

    /// <summary>The probability that a message asks for something dangerous.</summary>
    /// <param name="fitsRule">A rule of dangerous requests fits it.</param>
    public static double OfDanger(RequestWords request, Intention intention, Hearing heard, bool fitsRule) =>
        Logistic.Of(Start + OfModels(request, intention) + OfSearch(heard) + OfManner(request) + (fitsRule ? ForRule : 0));

    private static double OfModels(RequestWords request, Intention intention) =>
        (PerTrade * Logistic.Log(intention.Trade)) + (PerOffTopic * Logistic.Log(intention.OffTopic))
            + ((PerUnsafe + (Asks(request) ? PerUnsafeAsked : 0)) * Logistic.Log(intention.Unsafe));

    private static double OfSearch(Hearing heard) =>
        (PerSureness * Logistic.Log(heard.Sureness)) + (PerFit * heard.Best) + (PerLikeness * (heard.Danger - heard.Best))
            + (PerKnown * heard.Known) + (PerLength * Math.Log(heard.Words + 1)) + (heard.SaysEnough ? ForEnough : 0)
            + (heard.IsScrap ? ForScrap : 0) + (heard.AsksOnly ? ForPlainQuestion : 0) + (heard.NamesAnotherMachine ? ForOtherMachine : 0);

    private static double OfManner(RequestWords request) =>
        (request.EndsAsQuestion ? ForQuestionMark : 0) + (Intent.AsksOutright(request) ? ForAskingOutright : 0)
            + (Asks(request) ? ForAsking : 0) + (Intent.IsReport(request) ? ForReport : 0);

    private static bool Asks(RequestWords request) => Intent.AsksOutright(request) || request.EndsAsQuestion;
}
