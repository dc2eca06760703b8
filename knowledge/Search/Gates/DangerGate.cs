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

    // The last weight is set by hand: as fitted (-2.41) a request could pass that names a safe way beside the dangerous
    // one.
    public static readonly Gate Gate = new(
    [
        ("start", -3.7), ("trade", 0.15), ("off topic", -0.29), ("unsafe", 2.02), ("unsafe, asked", -0.78),
        ("sureness", 0.68),
        ("fit", 1.05), ("likeness", 7.71), ("known", 0.12), ("length", 1.22), ("says enough", -0.23), ("scrap", -0.41),
        ("plain question", -1.92), ("other machine", 0.35), ("question mark", 1.43), ("asks outright", 0.23),
        ("asks", 1.61),
        ("report", -1.49), ("rule", 4.62), ("meant", 0.5), ("trouble", 0.49), ("tells what was done", -2.88),
        ("seeks the safe way", -0.5),
    ]);

    /// <summary>The signs of a message, in the order of the gate's weights.</summary>
    public static double[] SignsOf(HeardMessage message)
    {
        var (intention, heard, request) = (message.Intention, message.Hearing, message.Request);
        var outright = Intent.AsksOutright(request);
        var asks = Sign(outright || request.EndsAsQuestion);
        var danger = Logistic.Log(intention.Unsafe);
        return
        [
            1, Logistic.Log(intention.Trade), Logistic.Log(intention.OffTopic), danger, asks * danger,
            Logistic.Log(heard.Sureness), heard.Best,
            message.LikenessToDanger - heard.Best, heard.Known, Math.Log(heard.Words + 1), Sign(heard.SaysEnough),
            Sign(message.IsScrap),
            Sign(heard.AsksOnly), Sign(heard.NamesAnotherMachine), Sign(request.EndsAsQuestion), Sign(outright), asks,
            Sign(Intent.IsReport(request)), Sign(message.DangerRule is not null), Sign(Intent.IsAsked(request)),
            Sign(message.Tokens.Any(token => token.IsNegated || States.Ill.Contains(token.Term))),
            Sign(Intent.TellsDone(request)), Sign(Intent.SeeksSafeWay(request)),
        ];
    }

    /// <summary>The probability that a message asks for something dangerous.</summary>
    public static double OfDanger(HeardMessage message) => Gate.Of(SignsOf(message));

    /// <summary>
    /// From which probability on a message is held back: a scrap that no rule fits must be clearly alike.
    /// </summary>
    public static double ThresholdFor(HeardMessage message) =>
        message.DangerRule is null && message.Request.Count <= Scrap && !Intent.IsAsked(message.Request)
            && !Intent.AsksOutright(message.Request) ? MatchThresholds.UnsafeUnasked : MatchThresholds.Unsafe;

    private static double Sign(bool holds) => holds ? 1 : 0;
}
