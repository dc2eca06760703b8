using System.Text;
using DxAssistant.Knowledge.Content;
using DxAssistant.Knowledge.Pictures;

namespace DxAssistant.Server.Workbench.Drawing;

/// <summary>Words of pictures from the phrase file of the pages that are drawn.</summary>
internal sealed class PageWords(Library library) : IPictureWords
{
    // A page is laid out some hundred times before it fits.
    private readonly Dictionary<string, string[]> parts = new(StringComparer.Ordinal);

    /// <exception cref="ArgumentException">The phrase file lacks the phrase.</exception>
    public string Say(string phrase, params ReadOnlySpan<(string Slot, string Text)> slots)
    {
        string[] said = Parts(phrase);
        if (said.Length == 1) return said[0];
        var text = new StringBuilder();
        for (int part = 0; part < said.Length; part++)
            text.Append(part % 2 == 0 ? said[part] : Filled(said[part], slots));
        return text.ToString();
    }

    // Words and slots in turn, beginning and ending with words.
    private string[] Parts(string phrase)
    {
        if (parts.TryGetValue(phrase, out string[]? known)) return known;
        if (!library.Phrases.Missing([phrase]).IsEmpty)
            throw new ArgumentException($"the phrase file has no {phrase}: write it as a heading with its text below");
        return parts[phrase] = library.Phrases.Template(phrase).Split('{', '}');
    }

    private static string Filled(string slot, ReadOnlySpan<(string Slot, string Text)> slots)
    {
        foreach ((string name, string text) in slots)
            if (name == slot) return text;
        throw new ArgumentException($"no picture fills the slot {{{slot}}} of the phrase file");
    }
}
