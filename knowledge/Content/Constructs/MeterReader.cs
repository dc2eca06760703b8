using DxAssistant.Knowledge.Calculations;
using DxAssistant.Knowledge.Calculations.Doubt;
using DxAssistant.Knowledge.Content.Syntax;
using DxAssistant.Knowledge.Quantities;

namespace DxAssistant.Knowledge.Content.Constructs;

/// <summary>Reads what the maker of a class of meters promises on each range.</summary>
internal static class MeterReader
{
    /// <summary>Reads the ranges of a page.</summary>
    /// <param name="meter">Null when there is a problem.</param>
    /// <returns>What is wrong and where, or null.</returns>
    public static PlacedProblem? Read(Page page, out MeterClass? meter)
    {
        meter = null;
        TableRow[] rows = [.. (page.Section("Ranges")?.Table?.Rows ?? []).Where(row => row.Cells.Length == 3)];
        var ranges = new List<MeterRange>();
        foreach (TableRow row in rows)
        {
            if (Problem(row, ranges) is { } problem)
            {
                return problem;
            }
        }

        meter = ranges.Count > 0 ? MeterClass.OfRanges(ranges) : null;
        return null;
    }

    /// <summary>The meter of a page, or null when there is a problem.</summary>
    public static MeterClass? MeterOf(Page page)
    {
        Read(page, out MeterClass? meter);
        return meter;
    }

    private static PlacedProblem? Problem(TableRow row, List<MeterRange> ranges)
    {
        RichText upTo = row.Cells[0];
        RichText limit = row.Cells[1];
        if (!QuantityText.TryParse(upTo.Text, out Quantity? most) || most.Si <= 0
            || most.Unit.Kind == QuantityKind.Ratio)
        {
            return new PlacedProblem(upTo.Span, $"`{upTo.Text}` is not the end of a range");
        }

        if (!MeterClass.TryParse(limit.Text, out MeterClass? promise) || !Fits(promise, most.Unit.Kind))
        {
            return new PlacedProblem(limit.Span,
                $"`{limit.Text}` is not a limit of error of a {KindWords.Of(most.Unit.Kind)}");
        }

        if (ranges.LastOrDefault(range => range.Most.Unit.Kind == most.Unit.Kind) is { } before
            && before.Most.Si >= most.Si)
        {
            return new PlacedProblem(upTo.Span, $"the range to `{upTo.Text}` does not rise above `{before.Most}`");
        }

        ranges.Add(new MeterRange(most, promise));
        return null;
    }

    /// <summary>True when the last digit counts what is read; of a temperature or pressure it is a
    /// difference.</summary>
    public static bool Fits(MeterClass promise, QuantityKind kind) => promise.Counts == 0
        || promise.Resolution.Kind == kind || promise.Resolution.Kind == StepOf(kind);

    private static QuantityKind StepOf(QuantityKind kind) => kind switch
    {
        QuantityKind.Temperature => QuantityKind.TemperatureDifference,
        QuantityKind.GaugePressure or QuantityKind.AbsolutePressure => QuantityKind.Pressure,
        _ => kind,
    };
}
