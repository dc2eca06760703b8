using System.Collections.Immutable;
using System.Xml.Linq;
using DxAssistant.Cases;
using DxAssistant.Cases.Figures;
using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.Messages;

namespace DxAssistant.Bot.Tests.Cases.Figures;

/// <summary>Figures counted by hand from three small cases.</summary>
public sealed class FigureTablesTests
{
    private static readonly DateTimeOffset Noon = new(2030, 5, 6, 12, 0, 0, TimeSpan.Zero);

    private static readonly ImmutableArray<FigureTable> Tables = FigureTables.Of(
    [
        Case(0, new SeriesChosen("wall"), new RepairVerified("seat", "plug", true), new Closed("repaired")),
        Case(0, new SeriesChosen("wall"), new CheckPassedOver("gauges", CommandWord.Cannot),
            new RepairVerified("a", "board", false), new RepairVerified("b", "fan", true), new Closed("repaired")),
        Case(40, new CheckPassedOver("gauges", CommandWord.Skip), new CheckPassedOver("fuse", CommandWord.Skip),
            new Closed("watch")),
        Case(0, new SeriesChosen("wall")),
    ],
    [new ClaimFacts("fan", true), new ClaimFacts("board", false), new ClaimFacts("fan", false),
        new ClaimFacts("board", false)]);

    [Theory]
    [InlineData("series-by-month", "2030-05,wall,3|2030-06,,1")]
    [InlineData("faults-by-month", "2030-05,fan,1|2030-05,plug,1")]
    [InlineData("ends-by-month", "2030-05,2,0,1,2,1,1.5|2030-06,1,1,0,0,0,")]
    [InlineData("claimed-parts", "board,2,2|fan,2,1")]
    [InlineData("skipped-checks", "gauges,2|fuse,1")]
    public void Of_ThreeCases_CountsAsByHand(string table, string rows) =>
        Assert.Equal(rows,
            string.Join('|', Tables.Single(found => found.Name == table).Rows.Select(row => string.Join(',', row))));

    [Fact]
    public void Draw_Table_IsWellFormedAndShowsEachCount()
    {
        var svg = XDocument.Parse(MonthPlot.Draw(Tables[0], "Cases & months"));
        Assert.Equal(2, svg.Descendants().Count(element => element.Name.LocalName == "rect"));
        Assert.Contains(svg.Descendants(), element => element.Value == "not said");
    }

    [Theory]
    [InlineData("repaired", true, null)]
    [InlineData("repaired", false, "visit")]
    [InlineData("repaired", false, "reopened")]
    [InlineData("watch", false, null)]
    public void IsFirstVisit_CuredAndNobodyCameAgain(string ended, bool first, string? again)
    {
        CaseEvent[] more =
            again switch { "visit" => [new VisitBegun("tom", 2)], "reopened" => [new Reopened()], _ => [] };
        Assert.Equal(first,
            Case(0,
                [new SeriesChosen("wall"), .. more, new RepairVerified("seat", "plug", true),
                    new Closed(ended)]).IsFirstVisit);
    }

    [Fact]
    public void ToDraw_Ends_DrawsCountsAndNoMedian()
    {
        var drawn = FigureTables.ToDraw(Tables.Single(table => table.Name == "ends-by-month"))!;
        Assert.Equal("2030-05,ended,2|2030-05,no fault found,0|2030-05,first visit,2",
            string.Join('|', drawn.Rows.Take(3).Select(row => string.Join(',', row))));
        Assert.Null(FigureTables.ToDraw(Tables.Single(table => table.Name == "claimed-parts")));
    }

    private static CaseFacts Case(int days, params CaseEvent[] events) => CaseFacts.Of(
        [.. events.Select((happened, i) => new StoredEvent(i + 1, "t", Noon.AddDays(days)
            .AddMinutes(Minutes(events, i)), happened))]);

    // The first cure of the first case comes after one minute, that of the second after two.
    private static int Minutes(CaseEvent[] events, int at) =>
        events[at] is RepairVerified { Works: true } ? events.Length - 2 - (events.Length > 4 ? 1 : 0) : 0;
}
