using System.Collections.Immutable;

namespace DxAssistant.Server.Workbench.Writing;

/// <summary>Which lines of a page go, come and stay: as few as possible, up to a limit of work.</summary>
/// <remarks>
/// Source: Myers, "An O(ND) difference algorithm and its variations", Algorithmica 1 (1986), greedy form.
/// </remarks>
internal static class LineDiff
{
    // The trace takes the square of it in memory; beyond it the stretch that differs is replaced as a whole.
    private const int MostEdits = 1_000;

    /// <summary>All lines of both texts, in order.</summary>
    public static ImmutableArray<ChangedLine> Of(string before, string after)
    {
        string[] old = PageLines.Of(before), now = PageLines.Of(after);
        int head = 0;
        while (head < old.Length && head < now.Length && old[head] == now[head]) head++;
        int tail = 0;
        while (tail < old.Length - head && tail < now.Length - head && old[^(tail + 1)] == now[^(tail + 1)]) tail++;
        return [.. old[..head].Select(Kept), .. Middle(old[head..^tail], now[head..^tail]),
            .. old[^tail..].Select(Kept)];
    }

    private static ChangedLine Kept(string text) => new(LineMark.Kept, text);

    private static List<ChangedLine> Middle(string[] old, string[] now) =>
        (old.Length == 0 || now.Length == 0 ? null : Trace(old, now)) is { } trace
            ? Back(old, now, trace)
            : [.. old.Select(text => new ChangedLine(LineMark.Out, text)),
                .. now.Select(text => new ChangedLine(LineMark.In, text))];

    // For each number of edits, how far down the old text each diagonal reaches; null when there are too many edits.
    private static List<int[]>? Trace(string[] old, string[] now)
    {
        var trace = new List<int[]>();
        int most = Math.Min(MostEdits, old.Length + now.Length);
        int[] reach = new int[(2 * most) + 3];
        for (int edits = 0; edits <= most; edits++)
        {
            for (int diagonal = -edits; diagonal <= edits; diagonal += 2)
            {
                int x = ComesDown(reach, most + 1, diagonal, edits)
                    ? reach[most + 2 + diagonal]
                    : reach[most + diagonal] + 1;
                for (int y = x - diagonal; x < old.Length && y < now.Length && old[x] == now[y]; y++) x++;
                reach[most + 1 + diagonal] = x;
                if (x < old.Length || x - diagonal < now.Length) continue;
                trace.Add(reach[(most + 1 - edits)..(most + 2 + edits)]);
                return trace;
            }

            trace.Add(reach[(most + 1 - edits)..(most + 2 + edits)]);
        }

        return null;
    }

    private static bool ComesDown(int[] reach, int middle, int diagonal, int edits) =>
        diagonal == -edits || (diagonal != edits && reach[middle + diagonal - 1] < reach[middle + diagonal + 1]);

    private static List<ChangedLine> Back(string[] old, string[] now, List<int[]> trace)
    {
        var lines = new List<ChangedLine>();
        int x = old.Length, y = now.Length;
        for (int edits = trace.Count - 1; edits > 0; edits--)
        {
            int[] before = trace[edits - 1];
            int diagonal = x - y;
            bool down = ComesDown(before, edits - 1, diagonal, edits);
            int from = before[edits - 1 + diagonal + (down ? 1 : -1)];
            int start = down ? from : from + 1;
            for (; x > start; x--, y--) lines.Add(Kept(old[x - 1]));
            lines.Add(down ? new ChangedLine(LineMark.In, now[--y]) : new ChangedLine(LineMark.Out, old[--x]));
        }

        for (; x > 0; x--) lines.Add(Kept(old[x - 1]));
        lines.Reverse();
        return lines;
    }
}
