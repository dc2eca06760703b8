using System.Collections.Immutable;
using DxAssistant.Knowledge.Content;
using DxAssistant.Knowledge.Content.Model;

namespace DxAssistant.Knowledge.Pictures.Plans;

/// <summary>
/// All faults against all series and symptoms: what is proven, what is measured, where checks tell too little.
/// </summary>
public sealed class CoverageMap
{
    private const double Cell = 20, Key = 22, Size = 13, Apart = 14;

    private readonly IPictureWords words;
    private readonly CoverageTable table;
    private readonly double left, top, proofs, symptoms;

    private CoverageMap(Library library, SeriesPage? series, IPictureWords words)
    {
        this.words = words;
        table = new CoverageTable(library, series);
        left = table.Faults.Select(page => page.Title.Text).Concat(table.Series.Select(Explained)).Max(Wide) + 12;
        top = 60 + 4 * Key + table.Symptoms.Select(page => page.Title.Text)
            .Concat(table.Series.Select(page => page.Title.Text))
            .Concat([words.Say("picture-coverage-proof"), words.Say("picture-coverage-readings")]).Max(Wide);
        proofs = left + table.Series.Length * Cell + Apart;
        symptoms = proofs + 2 * Cell + Apart;
    }

    private double Right => symptoms + table.Symptoms.Length * Cell;

    private double Bottom => top + table.Faults.Length * Cell;

    /// <summary>Draws it.</summary>
    /// <param name="series">The only series to look at; null for all.</param>
    public static Planned Draw(Library library, SeriesPage? series, IPictureWords words) =>
        new CoverageMap(library, series, words).Draw(series);

    private Planned Draw(SeriesPage? series)
    {
        string title = series is null
            ? words.Say("picture-coverage-title")
            : words.Say("picture-coverage-title-one", ("series", series.Title.Text));
        var pen = new Pen(Math.Max(Right, KeyWidth) + 10, Bottom + Apart + table.Series.Length * Cell + 10);
        pen.Text("ink", 0, 24, title, size: 22, bold: true);
        for (int mark = 0; mark < 4; mark++) CoverageMark.Draw(pen, 10, 48 + mark * Key, (Coverage)(3 - mark))
            .Text("soft", 26, 53 + mark * Key, Say((Coverage)(3 - mark)), size: (int)Size);
        Heads(pen);
        var lines = ImmutableArray.CreateBuilder<PlannedLine>();
        for (int row = 0; row < table.Faults.Length; row++) Row(pen, table.Faults[row], top + row * Cell, lines);
        Explaining(pen);
        string text = words.Say("picture-coverage", ("faults", Shares.Number(table.Faults.Length)),
            ("symptoms", Shares.Number(table.Symptoms.Length)));
        return new Planned(pen.Finish("coverage-map", title, text, "group"), [new PlannedLine(0, text), .. lines]);
    }

    private void Heads(Pen pen)
    {
        for (int column = 0; column < table.Series.Length; column++)
            Head(pen, left + column * Cell, table.Series[column].Title.Text, table.Series[column].Title.Place.Path);
        Head(pen, proofs, words.Say("picture-coverage-proof"), null);
        Head(pen, proofs + Cell, words.Say("picture-coverage-readings"), null);
        for (int column = 0; column < table.Symptoms.Length; column++)
            Head(pen, symptoms + column * Cell, table.Symptoms[column].Title.Text,
                table.Symptoms[column].Title.Place.Path);
        foreach (double end in new[] { left + table.Series.Length * Cell, proofs + 2 * Cell, Right })
            pen.Line("thin", end, top, end, Bottom);
    }

    private void Head(Pen pen, double x, string name, string? page)
    {
        pen.Line("thin", x, top, x, Bottom);
        pen.Link(page is null ? null : "#" + page,
            inside => inside.TextUp(page is null ? "soft" : "ink", x + Cell / 2 + 4.5, top - 8, name, (int)Size));
    }

    private void Row(Pen pen, FaultPage fault, double y, ImmutableArray<PlannedLine>.Builder lines)
    {
        pen.Line("thin", 0, y, Right, y).Line("thin", 0, y + Cell, Right, y + Cell);
        pen.Link("#" + fault.Title.Place.Path,
            inside => inside.Text("ink", 0, y + 14.5, fault.Title.Text, size: (int)Size));
        for (int column = 0; column < table.Series.Length; column++)
            if (CoverageTable.IsFor(fault.Series, table.Series[column]))
                pen.Circle("ink", left + (column + 0.5) * Cell, y
                    + Cell / 2, 3.5, " fill=\"currentColor\" stroke-width=\"1\"");
        (int checks, int readings) = table.Proof(fault);
        Count(pen, proofs, y, checks);
        Count(pen, proofs + Cell, y, readings);
        lines.Add(new PlannedLine(0, words.Say("picture-coverage-fault",
            ("fault", fault.Title.Text), ("checks", Shares.Number(checks)), ("readings", Shares.Number(readings)))));
        for (int column = 0; column < table.Symptoms.Length; column++)
            if (table.Explains(fault, table.Symptoms[column]))
                Mark(pen, fault, table.Symptoms[column], symptoms + (column + 0.5) * Cell, y + Cell / 2, lines);
    }

    private void Mark(Pen pen, FaultPage fault, SymptomPage symptom, double x, double y,
        ImmutableArray<PlannedLine>.Builder lines)
    {
        Coverage coverage = table.Of(fault, symptom);
        string said = words.Say("picture-coverage-cell", ("symptom", symptom.Title.Text), ("mark", Say(coverage)));
        pen.Named($"{fault.Title.Text}. {said}", inside => CoverageMark.Draw(inside, x, y, coverage));
        if (coverage <= Coverage.Leans) lines.Add(new PlannedLine(1, said));
    }

    private void Explaining(Pen pen)
    {
        for (int row = 0; row < table.Series.Length; row++)
        {
            double y = Bottom + Apart + row * Cell;
            pen.Line("thin", 0, y, Right, y).Line("thin", 0, y + Cell, Right, y + Cell)
                .Text("soft", 0, y + 14.5, Explained(table.Series[row]), size: (int)Size);
            for (int column = 0; column < table.Symptoms.Length; column++)
                Count(pen, symptoms + column * Cell, y, table.Explaining(table.Symptoms[column], table.Series[row]));
        }
    }

    // Nothing is told by a dash, not by an empty cell that might be overlooked.
    private static void Count(Pen pen, double x, double y, int count) =>
        pen.Text(count == 0 ? "off" : "ink", x + Cell / 2, y
            + 14.5, count == 0 ? "–" : Shares.Number(count), Anchor.Middle, 12);

    private double KeyWidth => Enum.GetValues<Coverage>().Max(mark => Wide(Say(mark))) + 30;

    private string Explained(SeriesPage series) =>
        words.Say("picture-coverage-explained", ("series", series.Title.Text));

    private string Say(Coverage coverage) => words.Say(coverage switch
    {
        Coverage.Measured => "picture-coverage-measured",
        Coverage.Decided => "picture-coverage-decided",
        Coverage.Leans => "picture-coverage-leans",
        _ => "picture-coverage-thin",
    });

    private static double Wide(string text) => TextSize.Width(text, (int)Size);
}
