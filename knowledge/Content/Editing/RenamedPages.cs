using System.Collections.Immutable;

namespace DxAssistant.Knowledge.Content.Editing;

/// <summary>The texts of pages once one of them has another id.</summary>
public static class RenamedPages
{
    /// <summary>All pages that come, go or change.</summary>
    /// <param name="path">The page that gets another id.</param>
    /// <param name="problem">Why it cannot; null when it can. Then nothing is given.</param>
    /// <returns>By path; the text is null of a page that goes.</returns>
    public static ImmutableArray<(string Path, string? Text)> Of(ContentFolder folder, string path, string id,
        out string? problem)
    {
        Pages pages = Pages.Parse(folder);
        EditorRename? rename = new Renaming(pages).Of(pages.AtPath(path), id, out problem);
        if (rename is null) return [];
        Dictionary<string, string> files =
            rename.Files.ToDictionary(file => file.From, file => file.To, StringComparer.Ordinal);
        Dictionary<string, string> edited = rename.Edits.GroupBy(edit => edit.Place.Path, StringComparer.Ordinal)
            .ToDictionary(page => page.Key, page => Edited(folder.File(page.Key)!.Text, page), StringComparer.Ordinal);
        var changed = new SortedDictionary<string, string?>(StringComparer.Ordinal);
        foreach ((string at, string text) in edited) changed[at] = text;
        foreach ((string from, string to) in files)
        {
            changed[to] = edited.GetValueOrDefault(from) ?? folder.File(from)!.Text;
            changed[from] = null;
        }

        return [.. changed.Select(page => (page.Key, page.Value))];
    }

    // From the last to the first, so that no place moves before it is come to.
    private static string Edited(string text, IEnumerable<(EditorPlace Place, string Text)> edits)
    {
        foreach ((EditorPlace place, string put) in edits.Distinct()
            .OrderByDescending(edit => (edit.Place.Range.StartLine, edit.Place.Range.StartCharacter)))
        {
            int start = EditorRange.Offset(text, place.Range.StartLine, place.Range.StartCharacter);
            text = text[..start] + put
                + text[EditorRange.Offset(text, place.Range.EndLine, place.Range.EndCharacter)..];
        }

        return text;
    }
}
