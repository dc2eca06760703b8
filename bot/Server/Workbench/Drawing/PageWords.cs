using System.Text;
using DxAssistant.Knowledge.Content;
using DxAssistant.Knowledge.Pictures;

namespace DxAssistant.Server.Workbench.Drawing;

/// <summary>Words of pictures from the phrase file of the pages that are drawn.</summary>
internal sealed class PageWords(Library library) : IPictureWords
{
    /// <exception cref="ArgumentException">The phrase file lacks the phrase.</exception>
    public string Say(string phrase, params ReadOnlySpan<(string Slot, string Text)> slots)
    {
        if (!library.Phrases.Missing([phrase]).IsEmpty) throw new ArgumentException($"the phrase file has no {phrase}: write it as a heading with its text below");
        string template = library.Phrases.Template(phrase);
        var text = new StringBuilder(template.Length);
        for (int at = 0; at < template.Length;)
        {
            int close = template[at] == '{' ? template.IndexOf('}', at) : -1;
            if (close < 0) text.Append(template[at++]);
            else
            {
                text.Append(Filled(template[(at + 1)..close], slots));
                at = close + 1;
            }
        }

        return text.ToString();
    }

    private static string Filled(string slot, ReadOnlySpan<(string Slot, string Text)> slots)
    {
        foreach ((string name, string text) in slots)
            if (name == slot) return text;
        throw new ArgumentException($"no picture fills the slot {{{slot}}} of the phrase file");
    }
}
