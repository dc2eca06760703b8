namespace DxAssistant.Knowledge.Search;

/// <summary>Where the matcher changes its answer, set on the development phrases.</summary>
internal static class MatchThresholds
{
    /// <summary>
    /// From this probability on one fault alone is the answer: of such answers 97 in 100 must be right.
    /// </summary>
    public const double Certain = 0.97;
    /// <summary>The share of the best symptom's fit that the fit of a certain fault must reach.</summary>
    public const double OverSymptom = 1.1;
    /// <summary>Pages of talk that fit less than this do not answer.</summary>
    public const double FaintestTalk = 0.3;
    /// <summary>From this probability on faults are offered; under it the assistant asks back.</summary>
    public const double WorthOffering = 0.12;
    /// <summary>
    /// From this probability on a message may be talk of something else: it is asked what it is about.
    /// </summary>
    public const double OtherTalk = 0.33;
    /// <summary>From this probability on it is held to be such talk.</summary>
    public const double ClearlyOther = 0.8;
    /// <summary>A fault is certain only below this probability of other talk.</summary>
    public const double ClearlyOurs = 0.1;
    /// <summary>A message that is this many times likelier of the trade than talk is heard, however short.</summary>
    public const double ClearlyTrade = 5;
    /// <summary>The least fit of such a message to a page.</summary>
    public const double CloseFit = 0.6;
    /// <summary>
    /// From this probability on what is left of a message tells of a fault that other words of it seem to rule out.
    /// </summary>
    public const double ToldAllTheSame = 0.95;
    /// <summary>From this probability on a message is an unsafe request.</summary>
    public const double Unsafe = 0.3;
    /// <summary>
    /// The same of what fits no rule of danger and reads like talk of something else, or tells of a unit and asks for
    /// nothing.
    /// </summary>
    public const double UnsafeTold = 0.6;
    /// <summary>The same of a few words that ask for nothing and fit no rule of danger.</summary>
    public const double UnsafeUnasked = 0.95;
    /// <summary>From this probability on what no rule of danger fits reads like talk of something else.</summary>
    public const double ReadsAsTalk = 0.95;
    /// <summary>A refusal page, or what sounds like one, that fits as well as this holds the very words.</summary>
    public const double SameWording = 0.99;
    /// <summary>From this probability on a refusal page answers in place of the one that a rule names.</summary>
    public const double ClearPage = 0.5;
    /// <summary>What a fault gains for being twice as frequent as another, in log odds.</summary>
    public const double FavorPerDoubling = 0.02;
    /// <summary>Symptoms that fit less than this do not count.</summary>
    public const double FaintestSymptom = 0.15;
    /// <summary>How many candidates are given.</summary>
    public const int MostCandidates = 5;
}
