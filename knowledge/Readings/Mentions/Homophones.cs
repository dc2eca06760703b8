using DxAssistant.Knowledge.Readings.Numbers;
using DxAssistant.Knowledge.Readings.Text;
using DxAssistant.Knowledge.Readings.Units;

namespace DxAssistant.Knowledge.Readings.Mentions;

/// <summary>Words that dictation writes for numbers: "twenty for volts", "ate hundred".</summary>
internal static class Homophones
{
    private static readonly string[] Words = ["to", "too", "for", "fore", "ate", "won"];

    /// <summary>A number in words stands beside a word that may be part of it.</summary>
    public static bool Blur(TokenList tokens, NumberPhrase number)
    {
        if (!tokens[number.First].IsWord)
        {
            return false;
        }
        bool before = NumberWords.ScaleOf(tokens[number.First].Lower) is not null
            && Words.Contains(tokens[number.First - 1].Lower);
        bool tens = NumberWords.SmallOf(tokens[number.End - 1].Lower) is >= 20;
        bool after = tens && Words.Contains(tokens[number.End].Lower)
            && (number.End + 1 >= tokens.Count || UnitScanner.At(tokens, number.End + 1, _ => false) is not null);
        return before || after;
    }
}
