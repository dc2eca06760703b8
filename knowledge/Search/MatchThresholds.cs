namespace DxAssistant.Knowledge.Search;

/// <summary>Scores at which the matcher changes its answer, set on the development phrases.</summary>
internal static class MatchThresholds
{
    /// <summary>Below this the best fault says nothing.</summary>
    public const double Faintest = 0.10;
    /// <summary>The same where no part is named.</summary>
    public const double FaintestWithoutPart = 0.15;
    /// <summary>Share of the words said that must be known to this trade.</summary>
    public const double LeastKnown = 0.5;
    /// <summary>The same where a part is named.</summary>
    public const double LeastKnownOfPart = 0.2;
    /// <summary>From here one fault alone may be the answer.</summary>
    public const double Certain = 0.55;
    /// <summary>How far ahead of the next it must then be, as a share of its score.</summary>
    public const double Lead = 0.3;
    /// <summary>From here faults are offered; under it the assistant asks back.</summary>
    public const double WorthOffering = 0.2;
    /// <summary>A fault that fits this well is of this trade, whatever other machine is named.</summary>
    public const double ClearlyOurs = 0.85;
    /// <summary>A page of off-topic talk that fits this well decides, if it fits better than any fault.</summary>
    public const double OffTopic = 0.45;
    /// <summary>A page of unsafe requests that fits this well decides, if it fits better than any fault.</summary>
    public const double Unsafe = 0.6;
    /// <summary>What is left of a fault's score when the message rules it out.</summary>
    public const double RuledOutShare = 0.15;
    /// <summary>How much a symptom's fit counts for the faults behind it.</summary>
    public const double SymptomShare = 0.35;
    /// <summary>What a fault gains for being twice as frequent as another, as a share of its score.</summary>
    public const double FavorPerDoubling = 0.02;
    /// <summary>Symptoms that fit less than this do not count.</summary>
    public const double FaintestSymptom = 0.15;
    /// <summary>How many candidates are given.</summary>
    public const int MostCandidates = 5;
}
