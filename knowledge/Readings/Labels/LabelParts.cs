using DxAssistant.Knowledge.Readings.Text;

namespace DxAssistant.Knowledge.Readings.Labels;

/// <summary>The parts of a label as tokens: letters as they sound, and what joins them.</summary>
internal static class LabelParts
{
    /// <summary>The part a token stands for, in lower case: dictation writes the letter U as "you".</summary>
    public static string Of(Token token) => token.Lower switch
    {
        "you" or "yu" => "u",
        "vee" => "v",
        "ess" => "s",
        "tee" => "t",
        "are" or "ar" => "r",
        "see" or "sea" => "c",
        _ => token.Lower,
    };

    /// <summary>A token stands for a word of a label, in one of the ways people say it.</summary>
    public static bool Means(Token token, string part) => Of(token) == part || part switch
    {
        "temperature" => token.Lower is "temp" or "temps",
        "resistance" => token.Lower is "res" or "ohmed",
        "lowest" => token.Lower is "low" or "min" or "minimum" or "bottom",
        "highest" => token.Lower is "high" or "max" or "maximum" or "top" or "peak",
        "pipe" => token.Lower is "line",
        "outdoor" => token.Lower is "outside" or "outdoors",
        "indoor" => token.Lower is "inside" or "indoors",
        "ground" or "earth" => IsGround(token.Lower),
        _ => false,
    };

    /// <summary>A word of a code such as L1-gnd stands for a word of a label.</summary>
    public static bool Means(string word, string part) =>
        word == part || (part is "ground" or "earth" && IsGround(word));

    private static bool IsGround(string word) => word is "ground" or "earth" or "gnd" or "grd" or "g" or "pe";

    /// <summary>True for what stands between the two ends of a pair.</summary>
    public static bool Joins(TokenList tokens, int at) =>
        tokens[at].Is('-') || tokens[at].Is('/') || tokens[at].Lower is "to" or "through"
        || (tokens[at].Is("and") && tokens[at - 2].Lower is "between" or "across" or "from");
}
