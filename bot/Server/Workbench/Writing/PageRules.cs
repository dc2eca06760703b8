using System.Text.RegularExpressions;
using DxAssistant.Knowledge.Content;

namespace DxAssistant.Server.Workbench.Writing;

/// <summary>
/// What a page that comes over the web may be called and hold. Each says in one line what to do otherwise.
/// </summary>
internal static partial class PageRules
{
    /// <summary>Characters of a page, at most; the compiler reads no more.</summary>
    public const int MostCharacters = 100_000;

    /// <summary>Characters of a path, at most.</summary>
    public const int LongestPath = 100;

    // Reading Markdown takes the square of the links that are not closed: 20,000 of them took some ten seconds.
    private const int MostOpenLinks = 500;

    // Names that some systems keep for devices, whatever comes behind them.
    private static readonly HashSet<string> Devices =
        ["con", "prn", "aux", "nul", .. Enumerable.Range(0, 10).SelectMany(n => new[] { $"com{n}", $"lpt{n}" })];

    /// <summary>
    /// Why a page cannot be at a path; null when it can: one that is there, or a new one in a folder that is there.
    /// </summary>
    public static string? ProblemWithPath(string path, ContentFolder folder)
    {
        if (path.Length > LongestPath || !Written().IsMatch(path))
            return "The path of a page is folder/id.md, small letters, digits and hyphens.";
        if (folder.File(path) is not null) return null;
        if (Devices.Contains(Path.GetFileName(path).Split('.')[0]))
            return "Some systems cannot keep a file of that name: choose another id.";
        return path.Contains('/')
            && folder.Pages.Any(page => page.Path.StartsWith(path[..(path.IndexOf('/') + 1)], StringComparison.Ordinal))
            ? null : "There is no such page, and a new one goes into one of the folders.";
    }

    /// <summary>Why a text cannot be looked through; null when it can.</summary>
    public static string? ProblemWithSize(string text) =>
        text.Length > MostCharacters ? $"A page has at most {MostCharacters} characters; this one has {text.Length}."
        : OpenLinks(text) > MostOpenLinks
        ? $"More than {MostOpenLinks} links are not closed: put a bracket behind each address."
        : null;

    /// <summary>Why a text cannot be handed in; null when it can.</summary>
    public static string? ProblemWithText(string text) =>
        ProblemWithSize(text) ?? (text.Trim().Length == 0 ? "The page is empty." : StrangeIn(text));

    /// <summary>Why words cannot be taken that stand in a patch; null when they can.</summary>
    public static string? StrangeIn(string text)
    {
        for (int at = 0; at < text.Length; at++)
        {
            char c = text[at];
            if (char.IsHighSurrogate(c) && at + 1 < text.Length && char.IsLowSurrogate(text[at + 1])) at++;
            else if (char.IsSurrogate(c) || (char.IsControl(c) && c is not ('\n' or '\t')) || Hides(c))
                return $"Line {text.AsSpan(0, at).Count('\n') + 1} holds a character that cannot be seen (U+{(int)c:X4}): take it out.";
        }

        return null;
    }

    private static int OpenLinks(string text)
    {
        int open = 0;
        for (int at = text.IndexOf("](", StringComparison.Ordinal), next; at >= 0; at = next)
        {
            next = text.IndexOf("](", at + 2, StringComparison.Ordinal);
            if (!text.AsSpan(at, (next < 0 ? text.Length : next) - at).Contains(')')) open++;
        }

        return open;
    }

    // With them a reviewer reads something else than what is applied (Unicode Technical Standard 55).
    private static bool Hides(char c) => c is (>= '\u202A' and <= '\u202E') or (>= '\u2066' and <= '\u2069') or '\u200E'
        or '\u200F' or '\u2028' or '\u2029' or '\uFEFF';

    [GeneratedRegex(@"^([a-z0-9][a-z0-9-]*/)?[a-z0-9][a-z0-9-]*(\.[a-z]{2,3})?\.md\z", RegexOptions.CultureInvariant)]
    private static partial Regex Written();
}
