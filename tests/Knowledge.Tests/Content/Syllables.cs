namespace DxAssistant.Knowledge.Tests.Content;

/// <summary>Counts the syllables of English words by their groups of vowels.</summary>
/// <remarks>
/// A rule of thumb, as programs that measure reading levels use it: a silent e at the end is taken off, "le" after a
/// consonant kept.
/// </remarks>
internal static class Syllables
{
    private const string Vowels = "aeiouy";

    /// <summary>Syllables of one word, 1 or more; a figure or a sign counts as one.</summary>
    public static int Of(string word)
    {
        string letters = new([.. word.ToLowerInvariant().Where(char.IsAsciiLetter)]);
        int groups = letters.Where((letter, at) => Vowels.Contains(letter)
            && (at == 0 || !Vowels.Contains(letters[at - 1]))).Count();
        bool silent = letters.EndsWith('e') && !letters.EndsWith("le", StringComparison.Ordinal);
        return Math.Max(1, silent ? groups - 1 : groups);
    }
}
