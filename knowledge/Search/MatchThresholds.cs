namespace DxAssistant.Knowledge.Search;

/// <summary>Where the matcher changes its answer, set on the development phrases.</summary>
internal static class MatchThresholds
{
    /// <summary>From this probability on one fault alone is the answer: of such answers 97 in 100 must be right.</summary>
    public const double Certain = 0.88;
    /// <summary>From this probability on faults are offered; under it the assistant asks back.</summary>
    public const double WorthOffering = 0.12;
    /// <summary>From this probability on a message is talk of something else.</summary>
    public const double OtherTalk = 0.3;
    /// <summary>A fault that fits this well is of this trade, whatever other machine is named.</summary>
    public const double ClearlyOurs = 0.85;
    /// <summary>From this probability on a message is an unsafe request though no rule knows it.</summary>
    public const double Unsafe = 0.25;
    /// <summary>The same of a message that does not say that someone means to do it.</summary>
    public const double UnsafeUnasked = 0.8;
    /// <summary>What a fault gains for being twice as frequent as another, in log odds.</summary>
    public const double FavorPerDoubling = 0.02;
    /// <summary>Symptoms and pages of talk that fit less than this do not count.</summary>
    public const double FaintestSymptom = 0.15;
    /// <summary>How many candidates are given.</summary>
    public const int MostCandidates = 5;
}
