using System.Collections.Immutable;
using DxAssistant.Graph.Model;
using DxAssistant.Knowledge.Content.Constructs;
using DxAssistant.Knowledge.Content.Model;
using DxAssistant.Knowledge.Content.Syntax;

namespace DxAssistant.Knowledge.Content.Building;

/// <summary>Makes the record of the terms of coverage.</summary>
internal static class CoverageBuilder
{
    public static CoveragePage Build(PageReader page)
    {
        ImmutableArray<PartTerm> terms = page.Rows("Parts", (row, section) => Term(page, row, section));
        return new CoveragePage(
            page.Id,
            page.Title,
            page.Summary,
            page.Field("start") == "purchase" ? CoverageStart.Purchase : CoverageStart.Installation,
            Whole(page.Field("register-days")),
            Whole(page.Field("labour-months")),
            terms.First(term => term.Class.Text == PartList.EveryOther),
            TermOfPart(page, terms),
            page.Rows("Labour", (row, section) => Allowance(page, row, section))
                .ToImmutableSortedDictionary(allowance => allowance.Repair, allowance => allowance),
            page.Rows("Excluded", (row, section) => (Fault: page.Target(row.Cells[0], PageKind.Fault)!.Id,
                    Reason: page.Passage(row.Cells[1], section)))
                .ToImmutableSortedDictionary(row => new FaultId(row.Fault), row => row.Reason),
            page.Passages("Claim"),
            page.Sources)
        {
            ClaimBelief = Whole(page.Field("claim-belief")) / 100.0,
        };
    }

    private static ImmutableSortedDictionary<string, PartTerm> TermOfPart(
        PageReader page, ImmutableArray<PartTerm> terms) =>
        page.Rows("Classes", (row, _) => row)
            .SelectMany(row => PartList.Read(row.Cells[1].Text).Select(part => (part, name: row.Cells[0].Text)))
            .ToImmutableSortedDictionary(
                pair => pair.part, pair => terms.First(term => term.Class.Text == pair.name), StringComparer.Ordinal);

    private static PartTerm Term(PageReader page, TableRow row, Section section) => new(
        page.Passage(row.Cells[0], section), Whole(row.Cells[1].Text), Whole(row.Cells[2].Text),
        page.SourceOf(row.Cells[3])!);

    private static LabourAllowance Allowance(PageReader page, TableRow row, Section section) => new(
        new RepairId(page.Target(row.Cells[0], PageKind.Repair)!.Id), page.Passage(row.Cells[0], section),
        Number.Read(row.Cells[1].Text)!.Value, page.SourceOf(row.Cells[2])!);

    private static int Whole(string? text) => (int)Number.Read(text)!.Value;
}
