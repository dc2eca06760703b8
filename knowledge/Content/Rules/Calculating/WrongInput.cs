using DxAssistant.Knowledge.Content.Constructs;
using DxAssistant.Knowledge.Content.Rules.Numbers;
using DxAssistant.Knowledge.Content.Syntax;
using DxAssistant.Knowledge.Judging;

namespace DxAssistant.Knowledge.Content.Rules.Calculating;

/// <summary>An input that is not of the form or kind that the calculation takes.</summary>
/// <example>Bad: <c>| tolerance | 2 V |</c>. Good: <c>| tolerance | 2 K |</c>.</example>
internal sealed class WrongInput : IContentRule
{
    public string Name => "wrong-input";

    public string Meaning => "An input that is not of the form or kind that the calculation takes.";

    public RuleExample Bad { get; } = new("checks/room-sensor.md", """
        ## Expected
        | Input | Value | Source |
        |---|---|---|
        | curve | series room-air-sensor | series page |
        | tolerance | ⟦2 V⟧ | [Common practice](../sources.md#common-practice) |
        | meter | 1 % + 3 × 0.01 kΩ | [Common practice](../sources.md#common-practice) |
        | thermometer | 1 K | [Common practice](../sources.md#common-practice) |
        """);

    public RuleExample Good { get; } = new("checks/room-sensor.md", """
        ## Expected
        | Input | Value | Source |
        |---|---|---|
        | curve | series room-air-sensor | series page |
        | tolerance | 2 K | [Common practice](../sources.md#common-practice) |
        | meter | 1 % + 3 × 0.01 kΩ | [Common practice](../sources.md#common-practice) |
        | thermometer | 1 K | [Common practice](../sources.md#common-practice) |
        """);

    public IEnumerable<Diagnostic> Check(Pages pages) => pages.OfKind(PageKind.Check)
        .Select(CalculatedCheck.Of).OfType<CalculatedCheck>()
        .SelectMany(check => check.Inputs.SelectMany(row => Check(pages, check, row)))
        .DistinctBy(diagnostic => diagnostic.At);

    // A value of the series is blamed where it stands, once, even if several checks use it.
    private IEnumerable<Diagnostic> Check(Pages pages, CalculatedCheck check, InputRow row)
    {
        IEnumerable<(Page Page, RichText Value)> values = SeriesValue.Rating(row.Value.Text) is { } rating
            ? SeriesOf.Pages(pages, check.Page)
                .SelectMany(series => SeriesValue.Cells(series, rating).Select(cell => (series, cell)))
            : [(check.Page, row.Value)];
        foreach ((Page page, RichText value) in values.Where(value =>
            !IsReportedElsewhere(pages, value.Page, value.Value, row.Need)))
        {
            Linked linked = Linked.Of(pages.Target(page, value.Link));
            if (InputReader.Read(row.Need, check.KindOfReadings, value.Text, linked) is null)
            {
                yield return page.Error(Name, value.Span,
                    $"`{value.Text}` is not {InputReader.Wanted(row.Need, check.KindOfReadings)}",
                    $"`{check.Page.Id}` takes it as `{row.Need.Name}`: {row.Need.Meaning}");
            }
        }
    }

    // BrokenLink, UnknownKind, WrongCurve or WrongMeter reports it.
    private static bool IsReportedElsewhere(Pages pages, Page page, RichText value, InputNeed need) =>
        need.Form != InputForm.Word && value.Link is not null
        && (pages.Target(page, value.Link) is not { Kind: { } kind } target
            || (kind == PageKind.Curve && CurveReader.CurveOf(target) is null)
            || (kind == PageKind.Meter && MeterReader.MeterOf(target) is null));
}
