using System.Collections.Immutable;
using DxAssistant.Knowledge.Calculations.Circuit;
using DxAssistant.Knowledge.Content.Constructs;
using DxAssistant.Knowledge.Content.Rules.Numbers;
using DxAssistant.Knowledge.Content.Syntax;
using DxAssistant.Knowledge.Judging;
using DxAssistant.Knowledge.Quantities;

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

    public ImmutableArray<ExamplePair> More { get; } = [.. new[] { "11.4", "11.4 volts", "11,4 V" }.Select(wrong =>
        new ExamplePair(Supply($"⟦{wrong}⟧"), Supply("11.4 V")))];

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
                    HelpFor(check, row.Need, value.Text));
            }
        }
    }

    private static Remedy HelpFor(CalculatedCheck check, InputNeed need, string text) =>
        need.Form == InputForm.Refrigerant
        ? NearestWord.HintOrList(text, Refrigerant.All.Where(each => each.Dew is not null).Select(each => each.Name))
        : need.Form == InputForm.Number && (need.Kind ?? check.KindOfReadings) is { } kind
            && NumberForm.Instead(text, kind, UnitFor(check, need, kind)) is { } written ? written
        : $"`{check.Page.Id}` takes it as `{need.Name}`: {need.Meaning}";

    private static RuleExample Supply(string low) => new("checks/board-supply.md", $"""
        ## Expected
        | Input | Value | Source |
        |---|---|---|
        | low | {low} | [Common practice](../sources.md#common-practice) |
        | high | 12.6 V | [Common practice](../sources.md#common-practice) |
        | meter | 0.5 % + 2 × 0.01 V | [Common practice](../sources.md#common-practice) |
        """);

    private static Unit? UnitFor(CalculatedCheck check, InputNeed need, QuantityKind kind) => need.Kind is null
        ? check.UnitCells.Select(pair => ReadingUnit.Read(pair.Cell.Text, pair.Need.Kind)).FirstOrDefault()
        : Unit.All.FirstOrDefault(unit => unit.Kind == kind);

    // BrokenLink, UnknownKind, WrongCurve or WrongMeter reports it.
    private static bool IsReportedElsewhere(Pages pages, Page page, RichText value, InputNeed need) =>
        need.Form != InputForm.Refrigerant && value.Link is not null
        && (pages.Target(page, value.Link) is not { Kind: { } kind } target
            || (kind == PageKind.Curve && CurveReader.CurveOf(target) is null)
            || (kind == PageKind.Meter && MeterReader.MeterOf(target) is null));
}
