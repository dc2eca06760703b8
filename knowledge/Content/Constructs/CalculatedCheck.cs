using System.Collections.Immutable;
using DxAssistant.Knowledge.Content.Shapes;
using DxAssistant.Knowledge.Content.Syntax;
using DxAssistant.Knowledge.Judging;
using DxAssistant.Knowledge.Quantities;

namespace DxAssistant.Knowledge.Content.Constructs;

/// <summary>A check that names a known calculation.</summary>
/// <param name="Readings">Null when the page has no such table or its heads are wrong.</param>
/// <param name="Expected">Null when the page has no such table or its heads are wrong.</param>
internal sealed record CalculatedCheck(Page Page, IJudge Judge, PipeTable? Readings, PipeTable? Expected)
{
    /// <summary>The check of a page, or null when it does not calculate.</summary>
    public static CalculatedCheck? Of(Page page) => Judges.Find(page.Front?.Field("calculation")?.Text) is { } judge
        ? new CalculatedCheck(page, judge, TableOf(page, "Readings"), TableOf(page, "Expected"))
        : null;

    /// <summary>The unit cell of each reading, with what the calculation wants there.</summary>
    public IEnumerable<(RichText Cell, ReadingNeed Need)> UnitCells =>
        Readings?.Rows.Zip(Judge.Readings)
            .Where(pair => pair.First.Cells.Length == 4 && !pair.First.Cells[1].IsEmpty)
            .Select(pair => (pair.First.Cells[1], pair.Second)) ?? [];

    /// <summary>The kind of the first reading; null when it is not known.</summary>
    public QuantityKind? KindOfReadings =>
        UnitCells.Select(pair => pair.Need.Kind ?? ReadingUnit.Read(pair.Cell.Text, null)?.Kind).FirstOrDefault();

    /// <summary>The rows of inputs that the calculation knows.</summary>
    public ImmutableArray<InputRow> Inputs =>
    [
        .. from row in Expected?.Rows ?? []
           where row.Cells.Length == 3 && !row.Cells[1].IsEmpty
           let need = Judge.Inputs.FirstOrDefault(need => need.Name == row.Cells[0].Text)
           where need is not null
           select new InputRow(need, row.Cells[0], row.Cells[1]),
    ];

    /// <summary>True when every row is an input of the calculation and no required one is missing.</summary>
    public bool HasAllInputs => Inputs.Length == Expected?.Rows.Length
        && Judge.Inputs.All(need => !need.Required || Inputs.Any(row => row.Need.Name == need.Name));

    /// <summary>The inputs as one series gives them; null when one of them cannot be read, which other rules
    /// report.</summary>
    public ImmutableSortedDictionary<string, JudgeInput>? InputsFor(Page series, Pages pages)
    {
        var inputs = ImmutableSortedDictionary.CreateBuilder<string, JudgeInput>(StringComparer.Ordinal);
        foreach (InputRow row in Inputs)
        {
            string? rating = SeriesValue.Rating(row.Value.Text);
            RichText? value = rating is null ? row.Value : SeriesValue.Cells(series, rating).FirstOrDefault();
            Linked linked = Linked.Of(pages.Target(rating is null ? Page : series, value?.Link));
            if (value is null || InputReader.Read(row.Need, KindOfReadings, value.Text, linked) is not { } input)
            {
                return null;
            }

            inputs[row.Need.Name] = input;
        }

        return inputs.ToImmutable();
    }

    private static PipeTable? TableOf(Page page, string heading) =>
        page.Section(heading)?.Table is { } table && PageShapes.Of(PageKind.Check).Section(heading)!.Fits(table)
            ? table : null;
}
