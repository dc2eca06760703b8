namespace DxAssistant.Knowledge.Search;

/// <summary>How the parts of a score weigh, set on the development phrases.</summary>
internal static class Weights
{
    /// <summary>The closest single wording of an entry.</summary>
    public static double Phrase = 0.7;
    /// <summary>An entry's page as a whole.</summary>
    public static double Page = 0.3;
    /// <summary>Two words that stand together, against one alone.</summary>
    public static double Pair = 0.2;
    /// <summary>Words that were said but are not in the wording, against shared ones.</summary>
    public static double Unmatched = 0.35;
    /// <summary>Words of the wording that were not said.</summary>
    public static double Unsaid = 0.65;
    public static double Shingle = 0.2;
    public static double Second = 0.2;
    public static float TitleBoost = 0.5f;
    public static float PageBoost = 1;
    public static float PairBoost = 0.5f;
}
