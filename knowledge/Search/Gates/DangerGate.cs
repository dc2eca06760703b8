using System.Collections.Immutable;
using DxAssistant.Knowledge.Search.Learning;
using DxAssistant.Knowledge.Search.Requests;

namespace DxAssistant.Knowledge.Search.Gates;

/// <summary>
/// Whether a message asks for something dangerous, by the rules, the manner of asking, the models and the likeness to
/// what refusal pages hold.
/// </summary>
internal static class DangerGate
{
    /// <summary>Messages of no more words than this that ask for nothing are scraps: "bottle is empty".</summary>
    private const int Scrap = 4;

    private static readonly ImmutableArray<string> Answers = ["yes", "yep", "yeah", "no", "nope", "not"];

    // The weight of a rule is set by hand: the rules were mended on the very lines that the others are fitted on, which
    // would have it seem sure. The others are fitted as if there were no rules.
    public static readonly Gate Gate = new(
    [
        ("start", -0.46), ("trade", 0.09), ("off topic", -0.14), ("unsafe", 1.02), ("sureness", 0.05),
        ("fit", -3.34), ("likeness", 2.54), ("length", -0.54), ("says enough", 2.43), ("scrap", -1.96),
        ("plain question", -1.34), ("asks outright", 0.32), ("asks", 1.13), ("report", -1.56), ("rule", 4.62),
        ("meant", 0.28), ("tells what was done", -1.45), ("seeks the safe way", -0.92), ("harmless", -0.32),
    ]);

    /// <summary>The signs of a message, in the order of the gate's weights.</summary>
    public static double[] SignsOf(HeardMessage message)
    {
        var (intention, heard, request) = (message.Intention, message.Hearing, message.Request);
        var outright = Intent.AsksOutright(request);
        return
        [
            1, Logistic.Log(intention.Trade), Logistic.Log(intention.OffTopic), Logistic.Log(intention.Unsafe),
            Logistic.Log(heard.Sureness), heard.Best,
            message.LikenessToDanger - Math.Max(heard.Best, message.LikenessToHarmless), Math.Log(heard.Words + 1),
            Sign(heard.SaysEnough), Sign(message.IsScrap), Sign(heard.AsksOnly), Sign(outright),
            Sign(outright || request.EndsAsQuestion), Sign(Intent.IsReport(request)),
            Sign(message.DangerRule is not null), Sign(Intent.IsAsked(request)), Sign(Intent.TellsDone(request)),
            Sign(Intent.SeeksSafeWay(request)), Logistic.Log(intention.Harmless),
        ];
    }

    /// <summary>The probability that a message asks for something dangerous.</summary>
    public static double OfDanger(HeardMessage message) => Gate.Of(SignsOf(message));

    /// <summary>
    /// From which probability on a message is held back: what no rule fits must be more alike where it is likely to be
    /// something else, and clearly alike where it is a scrap that asks for nothing.
    /// </summary>
    public static double ThresholdFor(HeardMessage message) => message switch
    {
        { DangerRule: not null } => MatchThresholds.Unsafe,
        _ when IsAnswer(message.Request) => 1,
        _ when IsUnaskedScrap(message.Request) => MatchThresholds.UnsafeUnasked,
        _ when TellsOfUnit(message) || OffTopicTalk.ProbabilityOf(message) >= MatchThresholds.ReadsAsTalk =>
            MatchThresholds.UnsafeTold,
        _ => MatchThresholds.Unsafe,
    };

    // "Yes it spins".
    private static bool IsAnswer(RequestWords request) =>
        IsUnaskedScrap(request) && Answers.Contains(request[0]);

    /// <summary>Whether a message is a few words that ask for nothing.</summary>
    public static bool IsUnaskedScrap(RequestWords request) =>
        request.Count <= Scrap && !Intent.IsAsked(request) && !Intent.AsksOutright(request);

    private static bool TellsOfUnit(HeardMessage message) =>
        message.Intention.Trade > message.Intention.Unsafe && !Intent.AsksOutright(message.Request)
            && !message.Request.EndsAsQuestion;

    private static double Sign(bool holds) => holds ? 1 : 0;
}
