using System.Collections.Immutable;
using DxAssistant.Graph.Model;
using DxAssistant.Knowledge.Content.Model;
using DxAssistant.Knowledge.Content.Syntax;
using DxAssistant.Knowledge.Readings;

namespace DxAssistant.Knowledge.Content.Building;

/// <summary>Makes the record of a series.</summary>
internal static class SeriesBuilder
{
    public static SeriesPage Build(PageReader page) => new(
        page.Id,
        page.Title,
        page.Summary,
        page.Field("display")!,
        page.Field("market") == "°F and psig" ? Market.FahrenheitPsi : Market.CelsiusKilopascal,
        page.Field("serial"),
        page.Passages("Said as"),
        page.Rows("Ratings", (row, section) => ReadRating(page, row, section))
            .ToImmutableSortedDictionary(rating => rating.Name, rating => rating, StringComparer.Ordinal),
        page.Rows("Terminals", (row, section) => new Terminal(row.Cells[0].Text, page.Passage(row.Cells[1], section))),
        page.Rows("Codes", (row, section) => ReadCode(page, row, section)),
        page.Targets("Coverage", PageKind.Coverage).First().Id)
    {
        SerialExample = page.Field("serial-example"),
    };

    private static Rating ReadRating(PageReader page, TableRow row, Section section) => new(
        row.Cells[0].Text,
        page.Passage(row.Cells[1], section),
        page.Target(row.Cells[1], PageKind.Curve)?.Id,
        page.SourceOf(row.Cells[2])!);

    private static DisplayCode ReadCode(PageReader page, TableRow row, Section section) => new(
        row.Cells[0].Text,
        row.Cells[1].Text,
        new SymptomId(page.Target(row.Cells[2], PageKind.Symptom)!.Id),
        page.Passage(row.Cells[3], section));
}
