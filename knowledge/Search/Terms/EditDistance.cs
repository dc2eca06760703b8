namespace DxAssistant.Knowledge.Search.Terms;

/// <summary>
/// How many letters must be put in, left out, replaced, or swapped with the next, to make one word of another.
/// </summary>
/// <remarks>
/// Source: Damerau, A technique for computer detection and correction of spelling errors, 1964; no place edited twice.
/// </remarks>
internal static class EditDistance
{
    /// <param name="edits">1 or 2.</param>
    public static bool IsWithin(string one, string other, int edits)
    {
        if (Math.Abs(one.Length - other.Length) > edits || LettersApart(one, other) > 2 * edits)
            return false;
        Span<int> rows = stackalloc int[3 * (other.Length + 1)];
        var width = other.Length + 1;
        for (var j = 0; j < width; j++)
            rows[j] = j;
        for (var i = 1; i <= one.Length; i++)
        {
            var row = rows.Slice(i % 3 * width, width);
            if (Fill(row, rows.Slice((i + 2) % 3 * width, width), rows.Slice((i + 1) % 3 * width, width), one, other,
                i) > edits)
                return false;
        }
        return rows[(one.Length % 3 * width) + other.Length] <= edits;
    }

    /// <summary>Fills a row of the table of distances and gives its least.</summary>
    private static int Fill(Span<int> row, ReadOnlySpan<int> above, ReadOnlySpan<int> twoAbove, string one,
        string other, int i)
    {
        var least = row[0] = i;
        for (var j = 1; j < row.Length; j++)
        {
            var same = one[i - 1] == other[j - 1] ? 0 : 1;
            row[j] = Math.Min(Math.Min(row[j - 1], above[j]) + 1, above[j - 1] + same);
            if (i > 1 && j > 1 && one[i - 1] == other[j - 2] && one[i - 2] == other[j - 1])
                row[j] = Math.Min(row[j], twoAbove[j - 2] + 1);
            least = Math.Min(least, row[j]);
        }
        return least;
    }

    /// <summary>How many letters of the alphabet only one of the words has: a quick look before the table.</summary>
    private static int LettersApart(string one, string other) => int.PopCount(Letters(one) ^ Letters(other));

    private static int Letters(string word)
    {
        var letters = 0;
        foreach (var letter in word)
            letters |= 1 << (letter & 31);
        return letters;
    }
}
