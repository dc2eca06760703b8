using System.Globalization;
using System.Text;
using DxAssistant.Knowledge.Content;

namespace DxAssistant.Server.Workbench.Writing;

/// <summary>A proposal as a file that <c>git apply</c> takes at the top of the repository.</summary>
internal static class PatchFile
{
    /// <param name="place">The folder of the pages as seen from there, such as <c>content/</c>.</param>
    /// <param name="raw">A page as its file is, by path; null for a new page.</param>
    public static string Write(Proposal proposal, string place, Func<string, string?> raw)
    {
        var text = new StringBuilder();
        text.Append(CultureInfo.InvariantCulture,
            $"# Proposal {proposal.Number}\n# By: {OneLine(proposal.By)}\n# At: {proposal.At.UtcDateTime:yyyy-MM-dd'T'HH:mm:ss'Z'}\n");
        // Behind the mark nothing that is said can be read as part of a patch.
        foreach (string line in proposal.Note.Split('\n')) text.Append($"# {OneLine(line)}\n");
        foreach (ProposedPage page in proposal.Pages)
            text.Append(page.Before is null
                ? UnifiedText.Write(place + page.Path, null, page.After)
                : UnifiedText.Write(place + page.Path, raw(page.Path)!,
                    page.After is { } after ? AsIn(raw(page.Path)!, after) : null));
        return text.ToString();
    }

    /// <summary>
    /// The folder of the pages as seen from the top of its repository; by its own name where there is none.
    /// </summary>
    public static string PlaceOf(string root)
    {
        var folder = new DirectoryInfo(Path.GetFullPath(root).TrimEnd(Path.DirectorySeparatorChar));
        string place = folder.Name;
        for (DirectoryInfo? top = folder; top is not null; top = top.Parent)
        {
            if (!Path.Exists(Path.Combine(top.FullName, ".git"))) continue;
            place = Path.GetRelativePath(top.FullName, folder.FullName).Replace('\\', '/');
            break;
        }

        return place == "." || place.Any(c => c is '"' or '\\' || char.IsControl(c)) ? "" : place + "/";
    }

    /// <summary>The text with line ends and byte order mark of a file.</summary>
    private static string AsIn(string file, string text)
    {
        if (file.Contains("\r\n", StringComparison.Ordinal))
            text = text.Replace("\n", "\r\n", StringComparison.Ordinal);
        return file.StartsWith('\uFEFF') ? '\uFEFF' + text : text;
    }

    private static string OneLine(string words) =>
        string.Concat(words.Select(c => char.IsControl(c) || c is '\u2028' or '\u2029' ? ' ' : c));
}
