using DxAssistant.Knowledge.Content.Syntax;
using DxAssistant.Knowledge.Judging;

namespace DxAssistant.Knowledge.Content.Constructs;

/// <summary>Finds the verdicts that the outcomes of checks name.</summary>
internal static class VerdictPlaces
{
    public static IEnumerable<VerdictPlace> Of(Pages pages) => pages.OfKind(PageKind.Check).SelectMany(Of);

    /// <summary>The verdicts of one check; none when it names no known calculation.</summary>
    public static IEnumerable<VerdictPlace> Of(Page page) =>
        Judges.Find(page.Front?.Field("calculation")?.Text) is { } judge && OutcomeTable.Of(page) is { } outcomes
            ? outcomes.Rows.SelectMany(row => row.Verdicts is { } cell ? InCell(page, judge, row.Id.Text, cell) : [])
            : [];

    private static IEnumerable<VerdictPlace> InCell(Page page, IJudge judge, string outcome, RichText cell)
    {
        int start = cell.Span.Start;
        foreach (string part in page.Source.Slice(cell.Span).Split(','))
        {
            TextSpan span = page.Source.Trim(new TextSpan(start, part.Length));
            start += part.Length + 1;
            if (span.Length > 0)
            {
                yield return new VerdictPlace(page, judge, outcome, page.Source.Slice(span), span);
            }
        }
    }
}
