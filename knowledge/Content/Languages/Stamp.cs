using System.Security.Cryptography;
using System.Text;
using DxAssistant.Knowledge.Content.Syntax;

namespace DxAssistant.Knowledge.Content.Languages;

/// <summary>A short mark of the words that another language has to say; another wording gives another mark.</summary>
internal static class Stamp
{
    /// <summary>The front matter field of a page of another language that holds the mark of what it says.</summary>
    public const string Field = "says";

    public static string Of(Page page)
    {
        var words = new StringBuilder(page.Title?.Heading.Text).Append('\n').Append(page.Summary?.Text).Append('\n');
        foreach (TranslatedPart part in TranslatedParts.Of(page.Kind!.Value) ?? [])
        {
            // How people word a complaint differs by language; nothing is out of date when a wording is added.
            if (part.Heading != TranslatedPart.SaidAs && page.Section(part.Heading) is { } section)
                Add(words, part, section);
        }

        return Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(words.ToString())))[..8];
    }

    private static void Add(StringBuilder words, TranslatedPart part, Section section)
    {
        foreach (RichText text in section.Paragraphs.Concat(section.Items)) words.Append(text.Text).Append('\n');
        if (section.Table is not { } table) return;
        foreach (string head in part.Keys.Concat(part.Texts)
            .Where(head => head != TranslatedPart.SaidAs && table.Column(head) >= 0))
        {
            foreach (TableRow row in table.Rows) words.Append(row.Cell(table.Column(head))?.Text).Append('\n');
        }
    }
}
