using System.Collections.Immutable;
using System.Text.RegularExpressions;
using DxAssistant.Knowledge.Content;

namespace DxAssistant.Knowledge.Exchange;

/// <summary>
/// What a matrix adds to a folder that has pages already: pages that are not there, and lines for those that are.
/// </summary>
/// <param name="Pages">By path.</param>
/// <param name="Additions">The place and the line to put there; the pages themselves are left alone.</param>
/// <param name="ToDos">What is left to write on the new pages.</param>
public sealed partial record JoinedPages(
    ImmutableSortedDictionary<string, string> Pages, ImmutableArray<(string Place, string Line)> Additions,
    ImmutableArray<string> ToDos)
{
    public static JoinedPages Of(DependencyMatrix matrix, ContentFolder folder)
    {
        ImmutableSortedDictionary<string, double> words = Content.Pages.Parse(folder).Frequencies;
        string Nearest(double weight) =>
            words.IsEmpty ? "occasional" : words.MinBy(word => Math.Abs(Math.Log(word.Value / weight))).Key;
        ImmutableSortedDictionary<string, string> all = PageSkeleton.Of(matrix, Nearest);
        var lacking = all.Where(page => folder.File(page.Key) is null).ToArray();
        string faults = string.Concat(lacking.Where(page => page.Key.StartsWith("faults/", StringComparison.Ordinal))
            .Select(page => page.Value));
        var added = lacking.Where(page => IsAdded(page.Key, faults))
            .ToImmutableSortedDictionary(StringComparer.Ordinal);
        return new JoinedPages(added, [.. all.SelectMany(page => Lacking(page.Key, page.Value, folder, added))],
            PageSkeleton.ToDosOn(added));
    }

    // What every folder has is not for a table to add, nor is a repair for a fault that has one already.
    private static bool IsAdded(string path, string newFaults) => path.Split('/') switch
    {
        ["faults" or "symptoms" or "checks", _] => true,
        ["repairs", _] => newFaults.Contains($"](../{path})", StringComparison.Ordinal),
        _ => false,
    };

    // Rows and list items that lead to a page which the page there does not mention.
    private static IEnumerable<(string Place, string Line)> Lacking(
        string path, string text, ContentFolder folder, ImmutableSortedDictionary<string, string> added)
    {
        if (folder.File(path) is not { } there || PlaceOn(path) is not { } place) return [];
        return from line in text.Split('\n')
            let target = Target().Match(line).Groups[1].Value
            where target.Length > 0 && !there.Text.Contains($"]({target})", StringComparison.Ordinal)
                && (path != "index.md" || added.ContainsKey(target))
            select (place, line);
    }

    private static string? PlaceOn(string path) =>
        path == "index.md" ? path
        : path.StartsWith("symptoms/", StringComparison.Ordinal) ? $"{path}, under ## Causes"
        : path.StartsWith("checks/", StringComparison.Ordinal) ? $"{path}, under ## Likelihoods"
        : null;

    [GeneratedRegex(@"^(?:\| |- )\[(?:[^\]\\]|\\.)*\]\(([^)]+\.md)\)", RegexOptions.CultureInvariant)]
    private static partial Regex Target();
}
