using DxAssistant.Knowledge.Calculations;
using DxAssistant.Knowledge.Calculations.Sensors;
using DxAssistant.Knowledge.Content.Syntax;
using DxAssistant.Knowledge.Quantities;

namespace DxAssistant.Knowledge.Content.Constructs;

/// <summary>Reads a sensor curve: a table of points, the Steinhart–Hart coefficients, or resistance at 25 °C and
/// beta.</summary>
internal static class CurveReader
{
    /// <summary>The headings of which a curve page has one.</summary>
    public static readonly string[] Headings = ["Table", "Steinhart–Hart", "Beta"];

    // The usual range of a sensor that is given by a law alone (common practice, no source).
    private static readonly Temperature Coldest = Temperature.FromCelsius(-40);
    private static readonly Temperature Hottest = Temperature.FromCelsius(125);

    /// <summary>Reads the curve of a page.</summary>
    /// <param name="curve">Null when there is a problem.</param>
    /// <returns>What is wrong and where, or null.</returns>
    public static PlacedProblem? Read(Page page, out SensorCurve? curve)
    {
        curve = null;
        Section[] sections = [.. page.Sections.Where(section => Headings.Contains(section.Name))];
        if (sections.Length != 1)
        {
            return new PlacedProblem(page.IdSpan,
                sections.Length == 0 ? "the page has no curve" : "the page has more than one curve");
        }

        if (sections[0].Table is not { Rows.Length: > 0 } table)
        {
            return new PlacedProblem(sections[0].Heading.Span, "the curve has no table");
        }

        return sections[0].Name switch
        {
            "Table" => ReadTable(table, out curve),
            "Beta" => ReadBeta(table, out curve),
            _ => ReadSteinhartHart(table, out curve),
        };
    }

    /// <summary>The curve of a page, or null when there is a problem.</summary>
    public static SensorCurve? CurveOf(Page page)
    {
        Read(page, out SensorCurve? curve);
        return curve;
    }

    private static PlacedProblem? ReadTable(PipeTable table, out SensorCurve? curve)
    {
        curve = null;
        if (table.Head.Cells.Length != 2
            || !Unit.TryParse(table.Head.Cells[0].Text, QuantityKind.Temperature, out Unit? degrees)
            || !Unit.TryParse(table.Head.Cells[1].Text, QuantityKind.Resistance, out Unit? ohms))
        {
            return new PlacedProblem(table.Head.Span, "the heads must be a unit of temperature and one of resistance");
        }

        var points = new List<SensorPoint>();
        foreach (TableRow row in table.Rows.Where(row => row.Cells.Length == 2))
        {
            if (row.Cells.FirstOrDefault(cell => Number.Read(cell.Text) is null) is { } odd)
            {
                return new PlacedProblem(odd.Span, $"`{odd.Text}` is not a number");
            }

            points.Add(new SensorPoint(
                degrees.ToSi(Number.Read(row.Cells[0].Text)!.Value), ohms.ToSi(Number.Read(row.Cells[1].Text)!.Value)));
        }

        return SensorCurve.TryFromTable(points, out curve, out string? problem)
            ? null
            : new PlacedProblem(table.Head.Span, problem);
    }

    private static PlacedProblem? ReadBeta(PipeTable table, out SensorCurve? curve)
    {
        curve = null;
        TableRow row = table.Rows[0];
        if (table.Column("R25") != 0 || table.Column("B") != 1 || row.Cells.Length != 2)
        {
            return new PlacedProblem(table.Head.Span, "the heads must be R25 and B");
        }

        if (!QuantityText.TryParse(row.Cells[0].Text, QuantityKind.Resistance, out Quantity? ohms) || ohms.Si <= 0)
        {
            return new PlacedProblem(row.Cells[0].Span, $"`{row.Cells[0].Text}` is not a resistance above 0");
        }

        if (!QuantityText.TryParse(row.Cells[1].Text, QuantityKind.TemperatureDifference, out Quantity? beta)
            || beta.Si <= 0)
        {
            return new PlacedProblem(row.Cells[1].Span, $"`{row.Cells[1].Text}` is not a number of kelvins above 0");
        }

        curve = SensorCurve.Beta(Resistance.FromOhms(ohms.Si), TemperatureDelta.FromKelvins(beta.Si), Coldest, Hottest);
        return null;
    }

    private static PlacedProblem? ReadSteinhartHart(PipeTable table, out SensorCurve? curve)
    {
        curve = null;
        TableRow row = table.Rows[0];
        if (!table.Head.Cells.Select(cell => cell.Text).SequenceEqual(["A", "B", "C"]) || row.Cells.Length != 3)
        {
            return new PlacedProblem(table.Head.Span, "the heads must be A, B and C");
        }

        double?[] values = [.. row.Cells.Select(cell => Number.Read(cell.Text))];
        int odd = Array.FindIndex(values, value => value is null || value < 0 || value >= 1);
        odd = odd < 0 && values[1] == 0 ? 1 : odd;
        if (odd >= 0)
        {
            return new PlacedProblem(row.Cells[odd].Span,
                $"`{row.Cells[odd].Text}` is no such coefficient; it must be above 0 and below 1");
        }

        curve = SensorCurve.SteinhartHart(values[0]!.Value, values[1]!.Value, values[2]!.Value, Coldest, Hottest);
        return null;
    }
}
