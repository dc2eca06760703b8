using DxAssistant.Knowledge.Search.Clauses;

namespace DxAssistant.Knowledge.Search.Indexing;

/// <summary>How the parts of a score weigh, set on the development phrases.</summary>
internal static class Weights
{
    /// <summary>The closest single wording of an entry.</summary>
    public const double Phrase = 0.72;
    /// <summary>An entry's page by the words as said, without the glossary.</summary>
    public const double Plain = 0.28;
    /// <summary>Two words that stand together, against one alone.</summary>
    public const double Pair = 0.2;
    /// <summary>Words that were said but are not in the wording, against shared ones.</summary>
    public const double Unmatched = 0.35;
    /// <summary>Words of the wording that were not said.</summary>
    public const double Unsaid = 0.65;
    /// <summary>Two words that stand one after the other, in this order.</summary>
    public const double Shingle = 0.2;
    /// <summary>The mean of the three closest wordings, against the closest alone.</summary>
    public const double Crowd = 0.2;
    /// <summary>How many units of log odds a perfect fit is worth beside what the wording model says.</summary>
    public const double Fit = 4;
    /// <summary>The same of a symptom that the fault explains.</summary>
    public const double Explained = 2;
    /// <summary>
    /// The same of a page that the plain words of the whole message find first; others by their share of its score.
    /// </summary>
    public const double Whole = 8;
    /// <summary>How much the words after a turn of the message count beside the whole of it.</summary>
    public const double After = 0.5;
    /// <summary>The log odds that a fault wins whose page holds the very message.</summary>
    public const double SameWords = 8;
    /// <summary>The log odds that a fault loses when the message rules it out.</summary>
    public const double RuledOut = 2;
    /// <summary>The log odds by which a fault that is ruled out stays behind the best that is not.</summary>
    public const double Behind = 0.7;
    /// <summary>The least probability that counts.</summary>
    public const double Floor = 1e-4;
    /// <summary>The least score of a page that has the very wording said.</summary>
    public const double Own = 0.85;
}
