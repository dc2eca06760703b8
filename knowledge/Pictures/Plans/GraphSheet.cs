using System.Collections.Immutable;
using DxAssistant.Knowledge.Content.Model;

namespace DxAssistant.Knowledge.Pictures.Plans;

/// <summary>Three columns of boxes, checks, faults and repairs, below the symptom.</summary>
internal sealed class GraphSheet(
    ImmutableArray<GraphBox> checks, ImmutableArray<GraphBox> faults, ImmutableArray<GraphBox> repairs,
    ImmutableArray<GraphLine> lines)
{
    private const double Margin = 2, Between = 90, Head = 118, Foot = 34, Step = GraphBox.Width + Between;

    // Holds a fault in its column when no check leads to it.
    private const string Start = "start";

    public string Draw(SymptomPage symptom, SeriesPage series, IPictureWords words, ILayeredLayout layout)
    {
        ImmutableArray<(GraphBox Box, double Left, double Top)> placed = Placed(layout);
        double bottom = placed.Max(each => each.Top + each.Box.Height);
        var pen = new Pen(2 * Margin + 2 * Step + GraphBox.Width, bottom + Foot);
        Title(pen, symptom, series);
        Columns(pen, words);
        Dictionary<string, (GraphBox Box, double Left, double Top)> by =
            placed.ToDictionary(each => each.Box.Id, StringComparer.Ordinal);
        foreach (GraphLine line in lines) Way(pen, by[line.From], by[line.To], line.IsFull);
        foreach ((GraphBox box, double left, double top) in placed) box.Draw(pen, left, top);
        Key(pen, words, bottom + Foot - 8);
        return pen.Finish("symptom-graph", words.Say("picture-symptom-title", ("symptom", symptom.Title.Text)),
            words.Say("picture-symptom", ("symptom", symptom.Title.Text)), "group");
    }

    private ImmutableArray<(GraphBox Box, double Left, double Top)> Placed(ILayeredLayout layout)
    {
        GraphBox[] boxes = [.. checks, .. faults, .. repairs];
        var places = layout.Place(
            [new LayoutBox(Start, 1, 1), .. boxes.Select(box => new LayoutBox(box.Id, GraphBox.Width, box.Height))],
            [.. lines.Select(line => new LayoutLine(line.From, line.To)),
                .. faults.Where(fault => lines.All(line => line.To != fault.Id))
                    .Select(fault => new LayoutLine(Start, fault.Id))]);
        double top = boxes.Min(box => places[box.Id].Y - box.Height / 2);
        return [.. In(checks, 0), .. In(faults, 1), .. In(repairs, 2)];

        IEnumerable<(GraphBox, double, double)> In(ImmutableArray<GraphBox> column, int number) => column
            .Select(box => (box, Margin + number * Step, Head + places[box.Id].Y - box.Height / 2 - top))
            .OrderBy(each => each.Item3);
    }

    private static void Title(Pen pen, SymptomPage symptom, SeriesPage series)
    {
        double left = Margin + Step, middle = left + GraphBox.Width / 2;
        pen.Text("soft", Margin, 22, series.Title.Text);
        IReadOnlyList<string> lines = TextSize.Wrapped(symptom.Title.Text, GraphBox.Width / 1.15, 16);
        pen.Link("#" + symptom.Title.Place.Path, inside =>
        {
            inside.Box("ink", left, 2, left + GraphBox.Width, 16
                + lines.Count * 20, " fill=\"var(--paper)\" stroke-width=\"3\"");
            for (int line = 0; line < lines.Count; line++)
                inside.Text("ink", middle, 26 + line * 20, lines[line], Anchor.Middle, 16, bold: true);
        });
        pen.Line("ink", middle, 16 + lines.Count * 20, middle, Head - 36, " stroke-width=\"1.5\"");
    }

    private static void Columns(Pen pen, IPictureWords words)
    {
        string[] names = ["picture-symptom-checks", "picture-symptom-faults", "picture-symptom-repairs"];
        for (int column = 0; column < names.Length; column++)
        {
            double left = Margin + column * Step;
            pen.Text("soft", left, Head - 18, words.Say(names[column]), size: 14, bold: true)
                .Line("edge", left, Head - 10, left + GraphBox.Width, Head - 10);
        }
    }

    private static void Way(Pen pen, (GraphBox Box, double Left, double Top) from,
        (GraphBox Box, double Left, double Top) to, bool isFull)
    {
        double y = from.Top + from.Box.Height / 2, end = to.Top + to.Box.Height / 2;
        if (isFull) pen.Line("ink", from.Left + GraphBox.Width, y, to.Left, end, " stroke-width=\"1.5\"");
        else pen.Dashed("edge", from.Left + GraphBox.Width, y, to.Left, end);
    }

    private static void Key(Pen pen, IPictureWords words, double y)
    {
        string proof = words.Say("picture-symptom-key-proof");
        double x = Margin + 38 + TextSize.Width(proof, 13) + 24;
        pen.Line("ink", Margin, y - 4, Margin + 30, y - 4, " stroke-width=\"1.5\"")
            .Text("soft", Margin + 38, y, proof, size: 13)
            .Dashed("edge", x, y - 4, x + 30, y - 4)
            .Text("soft", x + 38, y, words.Say("picture-symptom-key-best"), size: 13);
    }
}
