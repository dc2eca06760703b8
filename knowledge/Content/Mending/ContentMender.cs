using System.Collections.Immutable;

namespace DxAssistant.Knowledge.Content;

/// <summary>Puts right what has one obvious mend, and leaves the rest to the author.</summary>
public static class ContentMender
{
    // A mend may bring to light what was not looked at before: a check's table once its heading is found.
    private const int MostRounds = 10;

    /// <summary>
    /// The folder after all mends that only one thing can be meant by; the same folder when there are none.
    /// </summary>
    public static ContentFolder Mend(ContentFolder folder)
    {
        ImmutableArray<Diagnostic> found = ContentCompiler.Compile(folder).Diagnostics;
        for (int round = 0; round < MostRounds; round++)
        {
            ContentFolder next = MendOnce(folder, found);
            if (ReferenceEquals(next, folder)) break;
            (folder, found) = (next, ContentCompiler.Compile(next).Diagnostics);
        }

        return folder;
    }

    // Pages on which more is wrong afterwards, such as two headings of one name, are left to the author.
    private static ContentFolder MendOnce(ContentFolder folder, ImmutableArray<Diagnostic> found)
    {
        ContentFolder next = Apply(folder, found);
        if (ReferenceEquals(next, folder)) return folder;
        ILookup<string, Diagnostic> after =
            ContentCompiler.Compile(next).Diagnostics.ToLookup(left => left.At.Path, StringComparer.Ordinal);
        string[] worse = [.. found.GroupBy(each => each.At.Path)
            .Where(page => after[page.Key].Count() >= page.Count()).Select(page => page.Key)];
        return worse.Length == 0 ? next : Apply(folder, [.. found.Where(each => !worse.Contains(each.At.Path))]);
    }

    /// <summary>The folder with the mends of some diagnostics; where two want one place, neither is done.</summary>
    public static ContentFolder Apply(ContentFolder folder, ImmutableArray<Diagnostic> diagnostics)
    {
        Mend[] mends = [.. diagnostics.Select(found => found.Mend).OfType<Mend>().Distinct()];
        Mend[] clear = [.. mends.Where(mend => mends.All(other => other == mend || !Meet(mend.At, other.At)))];
        if (clear.Length == 0) return folder;
        ILookup<string, Mend> byPath = clear.ToLookup(mend => mend.At.Path, StringComparer.Ordinal);
        return ContentFolder.Of(folder.Files.Select(file => byPath[file.Path].Any()
            ? file with { Text = Mended(file.Text, byPath[file.Path]) }
            : file));
    }

    private static bool Meet(SourceSpan one, SourceSpan other) =>
        one.Path == other.Path && one.Line == other.Line
        && one.Column <= other.Column + other.Length && other.Column <= one.Column + one.Length;

    private static string Mended(string text, IEnumerable<Mend> mends)
    {
        string[] lines = text.Split('\n');
        foreach (Mend mend in mends.OrderByDescending(mend => mend.At.Column))
        {
            string line = lines[mend.At.Line - 1];
            (int start, int end) = TextColumns.InCodeUnits(line, mend.At);
            lines[mend.At.Line - 1] = line[..start] + mend.Text + line[end..];
        }

        return string.Join('\n', lines);
    }
}
