using System.Text;

namespace DxAssistant.Knowledge.Content;

/// <summary>The anchor of a heading, as Markdown viewers make it.</summary>
public static class Slug
{
    /// <summary>Lower case; spaces become hyphens; everything but letters, digits, hyphens and underscores is
    /// dropped.</summary>
    public static string Of(string heading)
    {
        var slug = new StringBuilder();
        foreach (Rune rune in heading.EnumerateRunes())
        {
            if (Rune.IsLetterOrDigit(rune) || rune.Value is '-' or '_')
            {
                slug.Append(Rune.ToLowerInvariant(rune));
            }
            else if (Rune.IsWhiteSpace(rune))
            {
                slug.Append('-');
            }
        }

        return slug.ToString();
    }
}
