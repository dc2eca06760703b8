using System.Globalization;
using System.Text;

namespace DxAssistant.Server.Workbench.Writing;

/// <summary>
/// Changes of a page in the unified form, three lines around each, as <c>git apply</c> and <c>patch -p1</c> read it.
/// </summary>
/// <remarks>
/// Source: POSIX.1-2017, <c>diff</c>, unified output; the line "\ No newline at end of file" is common practice.
/// </remarks>
internal static class UnifiedText
{
    private const int Around = 3;

    /// <param name="path">From the top of the repository.</param>
    /// <param name="before">Null when the page is new.</param>
    /// <param name="after">Null when the page goes.</param>
    public static string Write(string path, string? before, string? after)
    {
        ChangedLine[] lines = [.. LineDiff.Of(before ?? "", after ?? "")];
        // A name with a space ends at the tab behind it.
        string end = path.Contains(' ') ? "\t\n" : "\n";
        var text = new StringBuilder().Append(before is null ? "--- /dev/null\n" : $"--- a/{path}{end}")
            .Append(after is null ? "+++ /dev/null\n" : $"+++ b/{path}{end}");
        int at = 0, old = 0, now = 0;
        foreach (Range hunk in Hunks(lines))
        {
            for (; at < hunk.Start.Value; at++) Count(lines[at], ref old, ref now);
            Write(text, lines[hunk], old, now);
        }

        return text.ToString();
    }

    private static IEnumerable<Range> Hunks(ChangedLine[] lines)
    {
        int start = -1, last = -1;
        for (int at = 0; at < lines.Length; at++)
        {
            if (lines[at].Mark == LineMark.Kept) continue;
            if (start >= 0 && at - last > (2 * Around) + 1)
            {
                yield return start..(last + 1 + Around);
                start = -1;
            }

            if (start < 0) start = Math.Max(0, at - Around);
            last = at;
        }

        if (start >= 0) yield return start..Math.Min(lines.Length, last + 1 + Around);
    }

    private static void Count(ChangedLine line, ref int old, ref int now)
    {
        if (line.Mark != LineMark.In) old++;
        if (line.Mark != LineMark.Out) now++;
    }

    private static void Write(StringBuilder text, ChangedLine[] shown, int old, int now)
    {
        int oldMany = 0, nowMany = 0;
        foreach (ChangedLine line in shown) Count(line, ref oldMany, ref nowMany);
        text.Append(CultureInfo.InvariantCulture,
            $"@@ -{First(old, oldMany)},{oldMany} +{First(now, nowMany)},{nowMany} @@\n");
        foreach (ChangedLine line in shown)
        {
            text.Append(line.Mark switch { LineMark.Out => '-', LineMark.In => '+', _ => ' ' }).Append(line.Text);
            if (!line.Text.EndsWith('\n')) text.Append("\n\\ No newline at end of file\n");
        }
    }

    // An empty stretch is numbered by the line before it.
    private static int First(int before, int many) => many == 0 ? before : before + 1;
}
