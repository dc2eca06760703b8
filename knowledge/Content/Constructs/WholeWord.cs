namespace DxAssistant.Knowledge.Content.Constructs;

/// <summary>Finds a word or phrase in a text, not as a piece of a longer word.</summary>
internal static class WholeWord
{
    /// <summary>
    /// Where the first one begins, letters large or small; −1 when there is none or the word is empty.
    /// </summary>
    public static int Find(string text, string word)
    {
        for (int from = 0; word.Length > 0 && from < text.Length;)
        {
            int at = text.IndexOf(word, from, StringComparison.OrdinalIgnoreCase);
            if (at < 0) return -1;
            if (!IsLetter(text, at - 1) && !IsLetter(text, at + word.Length)) return at;
            from = at + 1;
        }

        return -1;
    }

    private static bool IsLetter(string text, int at) => at >= 0 && at < text.Length && char.IsLetterOrDigit(text[at]);
}
