using DxAssistant.Knowledge.Search.Learning;
using DxAssistant.Knowledge.Search.Requests;
using DxAssistant.Knowledge.Search.Terms;

namespace DxAssistant.Knowledge.Search.Gates;

/// <summary>
/// Whether a message asks for something dangerous, by the rules, the manner of asking, the models and the likeness to
/// what refusal pages hold.
/// </summary>
internal static class DangerGate
{
    /// <summary>Messages of no more words than this that ask for nothing are scraps: "bottle is empty".</summary>
    private const int Scrap = 3;

    /// <summary>
    /// What asks for something tells of a unit all the same where the logarithm of that is so far ahead.
    /// </summary>
    private const double FarAhead = 2;

    // The weight of a rule is set by hand: the rules were mended on the very lines that the others are fitted on, which
    // would have it seem sure. The others are fitted as if there were no rules.
    public static readonly Gate Gate = new(
    [
        ("start", -4.36), ("trade", 0.13), ("off topic", -0.31), ("unsafe", 1.37), ("unsafe, asked", -0.44),
        ("sureness", 0.15), ("fit", 0.3), ("likeness", 5.02), ("known", -0.64), ("length", 0.85),
        ("says enough", 1.24), ("scrap", -0.53), ("plain question", -1.8), ("other machine", -0.27),
        ("question mark", -0.87), ("asks outright", 0.17), ("asks", 1.28), ("report", -0.01), ("rule", 4.62),
        ("meant", 0.63), ("trouble", 0.32), ("tells what was done", -2.87), ("seeks the safe way", -0.81),
        ("harmless", -0.22),
    ]);

    /// <summary>The signs of a message, in the order of the gate's weights.</summary>
    public static double[] SignsOf(HeardMessage message)
    {
        var (intention, heard, request) = (message.Intention, message.Hearing, message.Request);
        var outright = Intent.AsksOutright(request);
        var asks = Sign(Asks(request));
        var danger = Logistic.Log(intention.Unsafe);
        return
        [
            1, Logistic.Log(intention.Trade), Logistic.Log(intention.OffTopic), danger, asks * danger,
            Logistic.Log(heard.Sureness), heard.Best,
            message.LikenessToDanger - Math.Max(heard.Best, message.LikenessToHarmless), heard.Known,
            Math.Log(heard.Words + 1), Sign(heard.SaysEnough), Sign(message.IsScrap),
            Sign(heard.AsksOnly), Sign(heard.NamesAnotherMachine), Sign(request.EndsAsQuestion), Sign(outright), asks,
            Sign(Intent.IsReport(request)), Sign(message.DangerRule is not null), Sign(Intent.IsAsked(request)),
            Sign(message.Tokens.Any(token => token.IsNegated || States.Ill.Contains(token.Term))),
            Sign(Intent.TellsDone(request)), Sign(Intent.SeeksSafeWay(request)),
            Logistic.Log(intention.Harmless),
        ];
    }

    /// <summary>The probability that a message asks for something dangerous.</summary>
    public static double OfDanger(HeardMessage message) => Gate.Of(SignsOf(message));

    /// <summary>
    /// From which probability on a message is held back: what no rule fits must be clearly alike where it is a scrap
    /// that asks for nothing, or where its words rather tell of a unit.
    /// </summary>
    public static double ThresholdFor(HeardMessage message) =>
        message.DangerRule is null && (IsUnaskedScrap(message.Request) || RatherTellsOfUnit(message))
            ? MatchThresholds.UnsafeUnasked
            : MatchThresholds.Unsafe;

    private static bool IsUnaskedScrap(RequestWords request) =>
        request.Count <= Scrap && !Intent.IsAsked(request) && !Intent.AsksOutright(request);

    private static bool RatherTellsOfUnit(HeardMessage message)
    {
        var ahead = Logistic.Log(message.Intention.Trade) - Logistic.Log(message.Intention.Unsafe);
        return ahead > (Asks(message.Request) ? FarAhead : 0);
    }

    private static bool Asks(RequestWords request) => Intent.AsksOutright(request) || request.EndsAsQuestion;

    private static double Sign(bool holds) => holds ? 1 : 0;
}
