using System.Collections.Frozen;

namespace DxAssistant.Knowledge.Glyphs.Finding;

/// <summary>How letters and digits are said: their names, and the spelling alphabet of radio.</summary>
internal static class SpokenCharacters
{
    // The spelling alphabet of the ICAO (Annex 10), from memory.
    private static readonly FrozenDictionary<string, char> Alphabet =
        ("alpha bravo charlie delta echo foxtrot golf hotel india juliett kilo lima mike november oscar papa quebec "
            + "romeo sierra tango uniform victor whiskey xray yankee zulu")
            .Split(' ').Concat(["alfa", "fox", "juliet", "whisky"]).ToFrozenDictionary(word => word, word =>
                char.ToUpperInvariant(word[0]), StringComparer.Ordinal);

    private static readonly FrozenDictionary<string, char> Names = new Dictionary<string, char>
    {
        ["cee"] = 'C', ["dee"] = 'D', ["ee"] = 'E', ["eff"] = 'F', ["ef"] = 'F', ["gee"] = 'G', ["aitch"] = 'H',
            ["haitch"] = 'H', ["aych"] = 'H', ["jay"] = 'J',
        ["el"] = 'L', ["ell"] = 'L', ["en"] = 'N', ["pee"] = 'P', ["ess"] = 'S', ["tee"] = 'T', ["vee"] = 'V',
            ["zee"] = 'Z', ["zed"] = 'Z', ["ar"] = 'R',
    }.ToFrozenDictionary(StringComparer.Ordinal);

    // Names that are everyday words as well: taken only where a code is plainly meant.
    private static readonly FrozenDictionary<string, char> Risky = new Dictionary<string, char>
    {
        ["bee"] = 'B', ["be"] = 'B', ["see"] = 'C', ["sea"] = 'C', ["are"] = 'R', ["you"] = 'U', ["why"] = 'Y',
            ["tea"] = 'T', ["pea"] = 'P', ["oh"] = 'O',
        ["cue"] = 'Q', ["queue"] = 'Q', ["he"] = 'E', ["age"] = 'H', ["ache"] = 'H',
    }.ToFrozenDictionary(StringComparer.Ordinal);

    private static readonly FrozenDictionary<string, string> Digits = new Dictionary<string, string>
    {
        ["zero"] = "0", ["nought"] = "0", ["naught"] = "0", ["one"] = "1", ["two"] = "2", ["three"] = "3",
            ["four"] = "4", ["five"] = "5", ["fife"] = "5", ["six"] = "6",
        ["seven"] = "7", ["eight"] = "8", ["nine"] = "9", ["niner"] = "9", ["ten"] = "10", ["eleven"] = "11",
            ["twelve"] = "12", ["thirteen"] = "13", ["fourteen"] = "14",
        ["fifteen"] = "15", ["sixteen"] = "16", ["seventeen"] = "17", ["eighteen"] = "18", ["nineteen"] = "19",
    }.ToFrozenDictionary(StringComparer.Ordinal);

    private static readonly FrozenDictionary<string, char> Tens = new Dictionary<string, char>
    {
        ["twenty"] = '2', ["thirty"] = '3', ["forty"] = '4', ["fifty"] = '5', ["sixty"] = '6', ["seventy"] = '7',
            ["eighty"] = '8', ["ninety"] = '9',
    }.ToFrozenDictionary(StringComparer.Ordinal);

    /// <summary>The letter of a radio word, upper case.</summary>
    public static char? Radio(string word) => Alphabet.TryGetValue(word, out char letter) ? letter : null;

    /// <summary>The letter of a name that is no everyday word.</summary>
    public static char? Name(string word) => Names.TryGetValue(word, out char letter) ? letter : null;

    /// <summary>The letter of a name that is an everyday word too.</summary>
    public static char? RiskyName(string word) => Risky.TryGetValue(word, out char letter) ? letter : null;

    /// <summary>The digits of zero to nineteen.</summary>
    public static string? Small(string word) => Digits.GetValueOrDefault(word);

    /// <summary>The first digit of twenty to ninety.</summary>
    public static char? Ten(string word) => Tens.TryGetValue(word, out char digit) ? digit : null;
}
