using System.Collections.Frozen;

namespace DxAssistant.Knowledge.Search.Terms;

/// <summary>
/// One written word to the plain words it stands for: short forms, numbers in words, glued units, British spelling.
/// </summary>
internal static class WordForms
{
    private static readonly FrozenSet<string> Not = new[]
    {
        "cant", "wont", "dont", "doesnt", "didnt", "isnt", "arent", "wasnt", "werent", "hasnt", "havent", "hadnt",
        "aint", "couldnt", "wouldnt", "shouldnt", "cannot", "dosent", "doesent", "dosnt", "dont", "wount", "doenst",
        "never",
        "nothing's", "neither",
    }.ToFrozenSet(StringComparer.Ordinal);

    private static readonly FrozenDictionary<string, string> Same =
        new Dictionary<string, string>(StringComparer.Ordinal)
    {
        ["zero"] = "0", ["two"] = "2", ["three"] = "3", ["four"] = "4", ["five"] = "5", ["six"] = "6", ["seven"] = "7",
        ["eight"] = "8", ["nine"] = "9", ["ten"] = "10", ["twelve"] = "12", ["twenty"] = "20", ["thirty"] = "30",
        ["forty"] = "40", ["fifty"] = "50", ["hundred"] = "100", ["im"] = "i", ["ive"] = "i", ["thats"] = "that",
        ["wo"] = "without", ["ur"] = "your", ["u're"] = "your", ["gonna"] = "going", ["wanna"] = "want",
        ["wana"] = "want", ["gona"] = "going",
        ["wat"] = "what", ["tonite"] = "tonight", ["mins"] = "minutes",
        ["no's"] = "no",
    }.ToFrozenDictionary(StringComparer.Ordinal);

    public static IEnumerable<string> Of(string written)
    {
        if (written.Length == 0)
            return [];
        if (written.EndsWith("n't", StringComparison.Ordinal) || Not.Contains(written))
            return ["not"];
        if (written.EndsWith("'ll", StringComparison.Ordinal))
            return [Plain(written[..^3]), "will"];
        var mark = written.IndexOf('\'', StringComparison.Ordinal);
        if (mark > 0)
            return written.EndsWith("'s", StringComparison.Ordinal)
                ? [Plain(written[..mark]), "is"]
                : [Plain(written[..mark])];
        var digits = 0;
        while (digits < written.Length && (char.IsDigit(written[digits]) || written[digits] == '.'))
            digits++;
        return digits > 0 && digits < written.Length ? [written[..digits], Plain(written[digits..])] : [Plain(written)];
    }

    private static string Plain(string word) =>
        Same.TryGetValue(word, out var same) ? same : BritishSpelling.ToAmerican(word);
}
