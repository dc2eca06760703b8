using System.Collections.Immutable;
using DxAssistant.Knowledge.Quantities;

namespace DxAssistant.Knowledge.Pictures;

/// <summary>What speaks for a fault and what against it, as bars to the right and to the left.</summary>
public static class LedgerPicture
{
    private const double Middle = 120;
    private const double Reach = 96;
    private const double LineHeight = 18;
    private const double BarHeight = 14;

    // A factor of a thousand fills a side; more is not worth more paper.
    private static readonly double Full = Math.Log(1000);

    /// <summary>Draws it; null when nothing speaks either way.</summary>
    /// <param name="fault">Its title.</param>
    public static Drawn? Of(string fault, ImmutableArray<LedgerEntry> entries, IPictureWords words)
    {
        if (entries.IsEmpty) return null;
        double height = 24 + entries.Sum(entry => Lines(entry).Count * LineHeight + BarHeight + 12);
        var pen = new Pen(300, height);
        pen.Text("soft", Middle - 6, 15, words.Say("picture-ledger-against"), Anchor.End, TextSize.Scale)
            .Text("soft", Middle + 6, 15, words.Say("picture-ledger-for"), Anchor.Start, TextSize.Scale);
        double y = 24;
        foreach (LedgerEntry entry in entries) y = Row(pen, y, entry);
        string said = string.Join("; ", entries.Select(entry => $"{entry.What}: {Factor(entry)}"));
        string text = words.Say("picture-ledger", ("fault", fault), ("entries", said));
        return new Drawn("ledger", pen.Finish("ledger", fault, text), "picture-ledger", text);
    }

    private static double Row(Pen pen, double top, LedgerEntry entry)
    {
        double y = top + 14;
        foreach (string line in Lines(entry))
        {
            pen.Text("ink", 0, y, line);
            y += LineHeight;
        }

        double bar = y - 12;
        double end = Middle + Reach * Math.Clamp(entry.LogOdds / Full, -1, 1);
        pen.Line("edge", Middle, bar - 2, Middle, bar + BarHeight + 2);
        if (entry.LogOdds >= 0)
            pen.Box("found", Middle, bar, Math.Max(end, Middle + 2), bar
                + BarHeight, " fill=\"currentColor\" fill-opacity=\"0.55\"");
        else Key.Rungs(pen, Math.Min(end, Middle - 2), bar, Middle, bar + BarHeight);
        pen.Text("ink", 300, bar + 12, Factor(entry), Anchor.End, bold: true);
        return bar + BarHeight + 10;
    }

    private static IReadOnlyList<string> Lines(LedgerEntry entry) => TextSize.Wrapped(entry.What, 298, TextSize.Plain);

    private static string Factor(LedgerEntry entry)
    {
        double times = Math.Exp(Math.Min(Math.Abs(entry.LogOdds), Full));
        string more = Math.Abs(entry.LogOdds) > Full ? "> " : "";
        return $"{more}{(entry.LogOdds >= 0 ? "×" : "÷")} {NumberText.Of(times, 2)}";
    }
}
