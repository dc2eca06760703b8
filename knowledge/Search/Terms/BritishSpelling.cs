using System.Collections.Frozen;

namespace DxAssistant.Knowledge.Search.Terms;

/// <summary>British spelling to American, so that both meet in the index.</summary>
internal static class BritishSpelling
{
    private static readonly FrozenDictionary<string, string> Words =
        new Dictionary<string, string>(StringComparer.Ordinal)
    {
        ["mould"] = "mold", ["mouldy"] = "moldy", ["grey"] = "gray", ["metre"] = "meter", ["metres"] = "meters",
        ["centre"] = "center", ["fibre"] = "fiber", ["aluminium"] = "aluminum", ["litre"] = "liter",
        ["litres"] = "liters",
        ["programme"] = "program", ["tyre"] = "tire", ["plough"] = "plow", ["cheque"] = "check", ["burnt"] = "burned",
        ["spelt"] = "spelled", ["learnt"] = "learned", ["leant"] = "leaned", ["labelled"] = "labeled",
        ["analyse"] = "analyze",
        ["draught"] = "draft", ["sulphur"] = "sulfur", ["gauge"] = "gage", ["gauges"] = "gages",
        ["manoeuvre"] = "maneuver",
        ["colour"] = "color", ["colours"] = "colors", ["odour"] = "odor", ["vapour"] = "vapor",
        ["neighbour"] = "neighbor",
        ["neighbours"] = "neighbors", ["discoloured"] = "discolored", ["coloured"] = "colored", ["armour"] = "armor",
        ["modelled"] = "modeled", ["signalling"] = "signaling", ["levelled"] = "leveled", ["defence"] = "defense",
    }.ToFrozenDictionary(StringComparer.Ordinal);

    /// <summary>Words in -ise that are spelled so on both sides.</summary>
    private static readonly FrozenSet<string> KeepIse = new[]
    {
        "noise", "raise", "raised", "rise", "rising", "raising", "advise", "advised", "otherwise", "clockwise",
        "precise",
        "exercise", "surprise", "surprised", "likewise", "wise", "supervise", "supervised", "promise", "promised",
        "disguise",
    }.ToFrozenSet(StringComparer.Ordinal);

    public static string ToAmerican(string word)
    {
        if (Words.TryGetValue(word, out var american))
            return american;
        if (word.Length < 7 || KeepIse.Contains(word))
            return word;
        foreach (var (british, ending) in Endings)
        {
            if (word.EndsWith(british, StringComparison.Ordinal))
                return string.Concat(word.AsSpan(0, word.Length - british.Length), ending);
        }
        return word;
    }

    private static readonly (string British, string American)[] Endings =
        [("isation", "ization"), ("ised", "ized"), ("ises", "izes"), ("ising", "izing"), ("ise", "ize")];
}
