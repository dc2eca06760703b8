namespace DxAssistant.Knowledge.Tests.Content;

/// <summary>How hard single sentences are to read.</summary>
/// <param name="Sentences">How many there are.</param>
/// <param name="Words">Words of a sentence, mean.</param>
/// <param name="Longest">Words of the longest.</param>
/// <param name="SyllablesAWord">Syllables of a word, mean.</param>
internal sealed record ReadingLevel(int Sentences, double Words, int Longest, double SyllablesAWord)
{
    /// <summary>The school grade at which it is read with ease.</summary>
    /// <remarks>
    /// Source: J. P. Kincaid and others, Derivation of new readability formulas, Research Branch Report 8-75, 1975
    /// (constants from memory).
    /// </remarks>
    public double Grade => (0.39 * Words) + (11.8 * SyllablesAWord) - 15.59;

    /// <summary>Measures sentences, one at least.</summary>
    public static ReadingLevel Of(IReadOnlyCollection<string> sentences)
    {
        string[][] words =
            [.. sentences.Select(sentence => sentence.Split(' ', StringSplitOptions.RemoveEmptyEntries))];
        return new ReadingLevel(
            words.Length, words.Average(list => list.Length), words.Max(list => list.Length),
            words.SelectMany(list => list).Average(Syllables.Of));
    }
}
