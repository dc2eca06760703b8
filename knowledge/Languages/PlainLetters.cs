using System.Text;

namespace DxAssistant.Knowledge.Languages;

/// <summary>Letters without their accents, so that "esta" finds "está".</summary>
public static class PlainLetters
{
    // Spelt out: what a system knows of normal forms depends on how it was set up.
    private const string Accented = "àáâãäåāăąçćčĉďđèéêëēĕėęěğģìíîïīįıķĺļľłñńņňòóôõöøōőŕřśşšșţťțùúûüūůűųýÿźżž";
    private const string Plain = "aaaaaaaaaccccddeeeeeeeeeggiiiiiiikllllnnnnoooooooorrsssstttuuuuuuuuyyzzz";

    /// <summary>The letter in lower case without an accent.</summary>
    public static char Of(char letter)
    {
        char lower = char.ToLowerInvariant(letter);
        int at = Accented.IndexOf(lower, StringComparison.Ordinal);
        return at < 0 ? lower : Plain[at];
    }

    /// <summary>The words of a text: letters and digits, without accents, in lower case.</summary>
    public static IReadOnlyList<string> Words(string text)
    {
        var words = new List<string>();
        var word = new StringBuilder();
        foreach (char sign in text + " ")
        {
            if (char.IsLetterOrDigit(sign)) word.Append(Of(sign));
            else if (word.Length > 0)
            {
                words.Add(word.ToString());
                word.Clear();
            }
        }

        return words;
    }
}
