using DxAssistant.Server.Workbench.Writing;

namespace DxAssistant.Bot.Tests.Server.Workbench;

public sealed class LineDiffTests
{
    [Fact]
    public void Of_RandomEdits_LeadsFromOneTextToTheOther()
    {
        int seed = Environment.TickCount;
        var random = new Random(seed);
        for (int round = 0; round < 500; round++)
        {
            (string before, string after) = (Text(random), Text(random));
            ChangedLine[] lines = [.. LineDiff.Of(before, after)];
            Assert.True(before == Join(lines, LineMark.In)
                && after == Join(lines, LineMark.Out), $"seed {seed}, round {round}");
            Assert.True(Edits(lines) == LeastEdits(PageLines.Of(before), PageLines.Of(after)),
                $"seed {seed}, round {round}: too many edits");
        }
    }

    // Two pages without a line in common cost the square of their length, unless the work is bounded.
    [Fact]
    public void Of_TwoLongTextsWithNothingInCommon_ReplacesTheWhole()
    {
        string before = string.Concat(Enumerable.Range(0, 20_000).Select(n => $"a{n}\n")), after =
            before.Replace('a', 'b');
        ChangedLine[] lines = [.. LineDiff.Of(before, after)];
        Assert.Equal((before, after), (Join(lines, LineMark.In), Join(lines, LineMark.Out)));
    }

    private static string Text(Random random)
    {
        string text = string.Concat(Enumerable.Range(0, random.Next(12)).Select(_ => "abc"[random.Next(3)] + "\n"));
        return random.Next(3) == 0 ? text.TrimEnd('\n') : text;
    }

    private static string Join(ChangedLine[] lines, LineMark without) =>
        string.Concat(lines.Where(line => line.Mark != without).Select(line => line.Text));

    private static int Edits(ChangedLine[] lines) => lines.Count(line => line.Mark != LineMark.Kept);

    // The plain table: slow, and hard to get wrong.
    private static int LeastEdits(string[] old, string[] now)
    {
        int[,] least = new int[old.Length + 1, now.Length + 1];
        for (int x = 0; x <= old.Length; x++)
            for (int y = 0; y <= now.Length; y++)
                least[x, y] = x == 0 || y == 0 ? x + y : old[x - 1] == now[y - 1]
                    ? least[x - 1, y - 1]
                    : 1 + Math.Min(least[x - 1, y], least[x, y - 1]);
        return least[old.Length, now.Length];
    }
}
