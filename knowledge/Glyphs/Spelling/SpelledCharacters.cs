using System.Collections.Frozen;
using System.Globalization;
using DxAssistant.Knowledge.Glyphs.Finding;

namespace DxAssistant.Knowledge.Glyphs.Spelling;

/// <summary>
/// What words stand for where a code is spelled aloud: names of letters and digits, and what dictation makes of
/// them.
/// </summary>
internal static class SpelledCharacters
{
    private static readonly FrozenDictionary<string, string> Digits = Table(
        "0 zero nought naught nil null oh owe zeero", "1 one won wan", "2 two to too tu", "3 three tree free thre",
        "4 four for fore fower",
        "5 five fife fiv hive fives", "6 six sicks sick's sex sics siks six's", "7 seven sevin sevn sever",
        "8 eight ate ait eigth", "9 nine niner nein mine");

    private static readonly FrozenDictionary<string, string> Letters = Table(
        "A ay eh aye", "B bee be", "C cee see sea", "D dee de", "E ee eee he", "F eff ef", "G gee jee",
        "H aitch haitch aych age ache",
        "I eye", "J jay", "L el ell elle", "N en", "P pee pea", "Q cue queue", "R are ar", "S ess", "T tee tea",
        "U you yoo ewe yu", "Y why wye");

    private static readonly FrozenSet<string> Unmistakable =
        "zero nought naught one two three four five fife six seven eight nine niner bee cee dee eff aitch haitch aych jay el ell pee ess ee eee"
        .Split(' ').ToFrozenSet(StringComparer.Ordinal);

    /// <summary>The digits that a word can mean; null if none.</summary>
    public static string? Digit(string word) => Digits.GetValueOrDefault(word) ?? SpokenCharacters.Small(word);

    /// <summary>The letter that a word can mean, in capitals; null if none.</summary>
    public static string? Letter(string word) => Letters.GetValueOrDefault(word)
        ?? (SpokenCharacters.Radio(word) ?? SpokenCharacters.Name(word))?.ToString(CultureInfo.InvariantCulture);

    /// <summary>Whether a word hardly ever means anything else beside a code.</summary>
    public static bool IsSure(string word) => Unmistakable.Contains(word) || SpokenCharacters.Small(word)?.Length == 2
        || SpokenCharacters.Ten(word) is not null || SpokenCharacters.Radio(word) is not null;

    private static FrozenDictionary<string, string> Table(params string[] rows) => rows.Select(row => row.Split(' '))
        .SelectMany(row => row.Skip(1).Select(word => (word, row[0])))
        .ToFrozenDictionary(pair => pair.word, pair => pair.Item2, StringComparer.Ordinal);
}
