namespace DxAssistant.Knowledge.Search;

/// <summary>Whether a message asks for something dangerous: a logistic regression over the rules, the manner of asking, the models
/// and the likeness to what refusal pages hold.</summary>
/// <remarks>Its weights were fitted on the development phrases; the pages hold none of their wordings.</remarks>
internal static class DangerGate
{
    private const double Start = -2.32;
    private const double PerTrade = -0.23;
    private const double PerOffTopic = -0.25;
    private const double PerUnsafe = 3.25;
    private const double PerUnsafeAsked = -1.93;
    private const double PerSureness = 0.64;
    private const double PerFit = -1.29;
    private const double PerLikeness = 3.37;
    private const double PerKnown = 1.37;
    private const double PerLength = 0.21;
    private const double ForEnough = 0.57;
    private const double ForScrap = -0.57;
    private const double ForPlainQuestion = 0.07;
    private const double ForOtherMachine = -0.73;
    private const double ForQuestionMark = 1.48;
    private const double ForAskingOutright = 0.21;
    private const double ForAsking = 1.58;
    private const double ForReport = -2.18;
    private const double ForMereReport = 3.04;
    private const double ForRule = 6.94;

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
            + (Asks(request) ? ForAsking : 0) + (Intent.IsReport(request) ? ForReport : 0)
            + (Intent.IsMereReport(request) ? ForMereReport : 0);

    private static bool Asks(RequestWords request) => Intent.AsksOutright(request) || request.EndsAsQuestion;
}
