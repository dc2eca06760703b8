using DxAssistant.Knowledge.Content.Constructs;

namespace DxAssistant.Knowledge.Content;

/// <summary>Finds the known word that somebody probably meant.</summary>
internal static class NearestWord
{
    // Farther than this nobody is sure what was meant.
    private const int SureEdits = 2;

    /// <summary>"did you mean `x`?", or null when nothing known is near.</summary>
    public static Remedy? Hint(string word, IEnumerable<string> known)
    {
        string[] sorted = [.. known.Distinct().Order(StringComparer.Ordinal)];
        return Find(word, sorted) is { } near ? Meant(word, near, Sure(word, sorted)) : null;
    }

    /// <summary>The hint, or else the list of everything known.</summary>
    public static Remedy HintOrList(string word, IEnumerable<string> known)
    {
        string[] sorted = [.. known.Distinct().Order(StringComparer.Ordinal)];
        return Hint(word, sorted)
            ?? OddCharacter.Said(sorted.Length == 0 ? "none is known"
                : "known: " + string.Join(", ", sorted.Select(name => $"`{name}`")), word);
    }

    /// <summary>
    /// The hint, or else the list, for a word that should be an id: what is none is never put in its place.
    /// </summary>
    public static Remedy HintOrListOfIds(string word, IEnumerable<string> known) =>
        HintOrList(word, known) is var remedy
        && remedy.Instead is { } sure && !Id.IsId(sure) ? remedy with { Instead = null } : remedy;

    /// <summary>"did you mean `x`?", with the replacement when it is sure.</summary>
    public static Remedy Meant(string wrong, string near, string? sure) =>
        new(OddCharacter.Said(OddCharacter.Said($"did you mean `{near}`?", near), wrong))
        {
            Wrong = wrong, Instead = sure,
        };

    /// <summary>The nearest by edits of one character, within a third of the word; ties go to the first by
    /// ordinal.</summary>
    public static string? Find(string word, IEnumerable<string> known) => Nearest(word, known).Best;

    /// <summary>The nearest, when it is one or two edits away and every other known word is farther.</summary>
    public static string? Sure(string word, IEnumerable<string> known) =>
        Nearest(word, known) is { IsAlone: true, Edits: <= SureEdits, Best: { } best } && !OddCharacter.IsIn(best)
            ? best
            : null;

    private static (string? Best, int Edits, bool IsAlone) Nearest(string written, IEnumerable<string> known)
    {
        string word = OddCharacter.Plain(written);
        (string? Best, int Edits, bool IsAlone) nearest = (null, Math.Max(1, word.Length / 3) + 1, false);
        foreach (string candidate in known.Distinct().Order(StringComparer.Ordinal))
        {
            // Of a single character nothing would be left.
            if (word.Length == 1 && !string.Equals(word, candidate, StringComparison.OrdinalIgnoreCase)) continue;
            int edits = Edits(word, candidate, nearest.Edits + 1);
            if (edits < nearest.Edits) nearest = (candidate, edits, true);
            else if (edits == nearest.Edits && nearest.Best is not null) nearest.IsAlone = false;
        }

        return nearest;
    }

    // Optimal string alignment: insert, delete, replace, swap of neighbours.
    private static int Edits(string left, string right, int limit)
    {
        if (Math.Abs(left.Length - right.Length) >= limit)
        {
            return limit;
        }

        int[] before = new int[right.Length + 1];
        int[] last = [.. Enumerable.Range(0, right.Length + 1)];
        int[] row = new int[right.Length + 1];
        for (int i = 1; i <= left.Length; i++)
        {
            row[0] = i;
            for (int j = 1; j <= right.Length; j++)
            {
                int change = left[i - 1] == right[j - 1] ? 0 : 1;
                row[j] = Math.Min(Math.Min(row[j - 1], last[j]) + 1, last[j - 1] + change);
                if (i > 1 && j > 1 && left[i - 1] == right[j - 2] && left[i - 2] == right[j - 1])
                {
                    row[j] = Math.Min(row[j], before[j - 2] + 1);
                }
            }

            (before, last, row) = (last, row, before);
        }

        return last[right.Length];
    }
}
