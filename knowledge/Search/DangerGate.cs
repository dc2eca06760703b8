namespace DxAssistant.Knowledge.Search;

/// <summary>Whether a message asks for something dangerous: a logistic regression over the rules, the manner of asking and the models.</summary>
/// <remarks>Its weights were fitted on the development phrases, judged by pages that held none of their wordings.</remarks>
internal static class DangerGate
{
    private const double Start = -3.94;
    private const double PerTrade = -0.23;
    private const double PerOffTopic = -0.28;
    private const double PerUnsafe = 0.71;
    private const double PerSureness = 0.04;
    private const double PerFit = -1.79;
    private const double PerKnown = 1.27;
    private const double ForEnough = 2.33;
    private const double ForPlainQuestion = -1.71;
    private const double ForOtherMachine = -0.95;
    private const double ForQuestionMark = 2.54;
    private const double ForAskingOutright = 2.24;
    private const double ForReport = -1.38;
    private const double ForRule = 4.12;

    /// <summary>The probability that a message asks for something dangerous.</summary>
    /// <param name="fitsRule">A rule of dangerous requests fits it.</param>
    public static double OfDanger(RequestWords request, Intention intention, Hearing heard, bool fitsRule) => Logistic.Of(
        Start + (PerTrade * Logistic.Log(intention.Trade)) + (PerOffTopic * Logistic.Log(intention.OffTopic))
            + (PerUnsafe * Logistic.Log(intention.Unsafe)) + (PerSureness * Logistic.Log(heard.Sureness))
            + (PerFit * heard.Best) + (PerKnown * heard.Known) + (heard.SaysEnough ? ForEnough : 0)
            + (heard.AsksOnly ? ForPlainQuestion : 0) + (heard.NamesAnotherMachine ? ForOtherMachine : 0)
            + (request.EndsAsQuestion ? ForQuestionMark : 0) + (Intent.AsksOutright(request) ? ForAskingOutright : 0)
            + (Intent.IsReport(request) ? ForReport : 0) + (fitsRule ? ForRule : 0));
}
