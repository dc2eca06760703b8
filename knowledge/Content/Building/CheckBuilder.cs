using System.Collections.Immutable;
using DxAssistant.Graph.Model;
using DxAssistant.Knowledge.Content.Constructs;
using DxAssistant.Knowledge.Content.Model;
using DxAssistant.Knowledge.Content.Syntax;
using DxAssistant.Knowledge.Judging;
using DxAssistant.Knowledge.Quantities;

namespace DxAssistant.Knowledge.Content.Building;

/// <summary>Makes the record of a check.</summary>
internal static class CheckBuilder
{
    public static CheckPage Build(PageReader page)
    {
        IJudge? judge = Judges.Find(page.Field("calculation"));
        return new CheckPage(
            new CheckId(page.Id),
            page.Title,
            page.Joined("Ask"),
            page.Passages("How"),
            page.Pictures("How"),
            page.Passages("Said as"),
            judge?.Name,
            ReadReadings(page, judge),
            page.Rows("Expected", (row, section) => ReadInput(page, row, section))
                .ToImmutableSortedDictionary(input => input.Name, input => input, StringComparer.Ordinal),
            ReadOutcomes(page),
            page.Field("owners-only") == "true",
            [.. page.List("stop").Select(id => new OutcomeId(id))],
            [.. page.List("after").Select(id => new CheckId(id))],
            page.Series,
            page.Cautions,
            page.Sources)
        {
            Leaves = page.Field("leaves") is { } state ? new AccessId(state) : null,
            StopWet = [.. page.List("stop-wet").Select(id => new OutcomeId(id))],
            StopShock = [.. page.List("stop-shock").Select(id => new OutcomeId(id))],
            StopGas = [.. page.List("stop-gas").Select(id => new OutcomeId(id))],
            LeaveOff = [.. page.List("leave-off").Select(id => new OutcomeId(id))],
            NotAt = [.. page.List("not-at").Select(id => new SymptomId(id))],
            Modes = [.. page.List("modes")],
            OnlyAt = [.. page.List("only-at").Select(id => new SymptomId(id))],
            Needed = page.Field("needed") == "true",
            SameAs = [.. page.List("same-as").Select(id => new CheckId(id))],
            TellsMode = page.Field("tells-mode") == "true",
        };
    }

    private static ImmutableArray<ReadingField> ReadReadings(PageReader page, IJudge? judge)
    {
        ImmutableArray<TableRow> rows = page.Rows("Readings", (row, _) => row);
        return judge is null ? [] : page.Rows("Readings", (row, section) =>
        {
            Unit unit = ReadingUnit.Read(row.Cells[1].Text, judge.Readings[rows.IndexOf(row)].Kind)!;
            PossibleRange.TryRead(row.Cells[2].Text, unit.Kind, out PossibleRange? possible);
            return new ReadingField(row.Cells[0].Text, unit, possible!.Lowest, possible.Highest,
                page.Passage(row.Cells[2], section), page.Passage(row.Cells[3], section));
        });
    }

    private static ExpectedInput ReadInput(PageReader page, TableRow row, Section section) => new(
        row.Cells[0].Text,
        page.Passage(row.Cells[1], section),
        SeriesValue.Rating(row.Cells[1].Text),
        page.SourceOf(row.Cells[2]),
        page.Target(row.Cells[1], PageKind.Curve)?.Id,
        page.Target(row.Cells[1], PageKind.Meter)?.Id);

    private static ImmutableArray<AnswerOption> ReadOutcomes(PageReader page) =>
    [
        .. page.Section("Outcomes").SelectMany(
            section => OutcomeTable.Of(page.Page)!.Rows.Select(row => new AnswerOption(
            new OutcomeId(row.Id.Text),
            page.Passage(row.Answer, section),
            row.Verdicts is { } verdicts
                ? [.. VerdictWords.Split(verdicts.Text).Select(VerdictWords.Read).OfType<VerdictKind>()]
                : [],
            SaidAs.Split(row.SaidAs)))),
    ];
}
