using DxAssistant.Knowledge.Judging;

namespace DxAssistant.Conversation.Speaking;

/// <summary>The names of verdicts as pages, phrases and the log write them.</summary>
internal static class VerdictWord
{
    public static string Of(VerdictKind verdict) => verdict switch
    {
        VerdictKind.Within => "within",
        VerdictKind.Low => "low",
        VerdictKind.High => "high",
        VerdictKind.Unequal => "unequal",
        VerdictKind.OpenCircuit => "open circuit",
        VerdictKind.ShortCircuit => "short circuit",
        VerdictKind.Closed => "closed",
        VerdictKind.Absent => "absent",
        VerdictKind.Reversed => "reversed",
        VerdictKind.TooCloseToCall => "too close",
        VerdictKind.Impossible => "impossible",
        _ => throw new ArgumentOutOfRangeException(nameof(verdict), verdict, "no such verdict"),
    };

    /// <summary>The phrase that states the verdict.</summary>
    public static string Phrase(VerdictKind verdict) => "verdict-" + Of(verdict).Replace(' ', '-');
}
