namespace DxAssistant.Knowledge.Search.Terms;

/// <summary>How far two spellings are apart, weighing slips of the finger and of the ear lighter than others.</summary>
internal static class EditCost
{
    private const double Neighbor = 0.6;
    private const double SoundAlike = 0.5;
    private const double Doubled = 0.4;
    private const double Swap = 0.7;
    private const double Vowel = 0.7;

    private static readonly string[] Rows = ["qwertyuiop", "asdfghjkl", "zxcvbnm"];
    private static readonly string[] Sounds = ["ckq", "sz", "fv", "iy", "gj", "td", "mn", "bp", "cs"];

    /// <summary>0 for equal words; 1 for each letter wrong, less where fingers or ears often err.</summary>
    public static double Between(string one, string other)
    {
        var costs = new double[one.Length + 1, other.Length + 1];
        for (var i = 0; i <= one.Length; i++)
        {
            for (var j = 0; j <= other.Length; j++)
                costs[i, j] = i == 0 && j == 0 ? 0 : Cheapest(costs, one, other, i, j);
        }
        return costs[one.Length, other.Length] + (one[0] == other[0] ? 0 : 0.3);
    }

    private static double Cheapest(double[,] costs, string one, string other, int i, int j)
    {
        var best = double.PositiveInfinity;
        if (i > 0)
            best = costs[i - 1, j] + Extra(one, i);
        if (j > 0)
            best = Math.Min(best, costs[i, j - 1] + Extra(other, j));
        if (i > 0 && j > 0)
            best = Math.Min(best, costs[i - 1, j - 1] + Replace(one[i - 1], other[j - 1]));
        if (i > 1 && j > 1 && one[i - 1] == other[j - 2] && one[i - 2] == other[j - 1])
            best = Math.Min(best, costs[i - 2, j - 2] + Swap);
        return best;
    }

    private static double Extra(string word, int at)
    {
        if (at > 1 && word[at - 1] == word[at - 2])
            return Doubled;
        return IsVowel(word[at - 1]) || word[at - 1] == 'h' ? Vowel : 1;
    }

    private static double Replace(char one, char other)
    {
        if (one == other)
            return 0;
        if (Sounds.Any(group => group.Contains(one) && group.Contains(other)))
            return SoundAlike;
        if (IsVowel(one) && IsVowel(other))
            return Vowel;
        return AreNeighbors(one, other) ? Neighbor : 1;
    }

    private static bool IsVowel(char c) => c is 'a' or 'e' or 'i' or 'o' or 'u' or 'y';

    private static bool AreNeighbors(char one, char other)
    {
        var (row, column) = Place(one);
        var (otherRow, otherColumn) = Place(other);
        return row >= 0 && otherRow >= 0 && Math.Abs(row - otherRow) <= 1 && Math.Abs(column - otherColumn) <= 1;
    }

    private static (int Row, int Column) Place(char key)
    {
        var row = Array.FindIndex(Rows, keys => keys.Contains(key));
        return row < 0 ? (-1, -1) : (row, Rows[row].IndexOf(key, StringComparison.Ordinal));
    }
}
