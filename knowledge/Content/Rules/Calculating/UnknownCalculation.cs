using DxAssistant.Knowledge.Content.Syntax;

namespace DxAssistant.Knowledge.Content.Rules.Calculating;

/// <summary>A check whose calculation does not exist.</summary>
/// <example>Bad: <c>calculation: thermistor-curv</c>. Good: <c>calculation: thermistor-curve</c>.</example>
internal sealed class UnknownCalculation : IContentRule
{
    public string Name => "unknown-calculation";

    public string Meaning => "A check whose calculation does not exist.";

    public RuleExample Bad { get; } = new("checks/room-sensor.md", """
        ---
        kind: check
        id: room-sensor
        minutes: 5
        access: [isolated-open]
        who: technician
        series: [alder-one]
        calculation: ⟦thermistor-curv⟧
        ---
        """);

    public RuleExample Good { get; } = new("checks/room-sensor.md", """
        ---
        kind: check
        id: room-sensor
        minutes: 5
        access: [isolated-open]
        who: technician
        series: [alder-one]
        calculation: thermistor-curve
        ---
        """);

    public IEnumerable<Diagnostic> Check(Pages pages) =>
        from page in pages.OfKind(PageKind.Check)
        let field = page.Front!.Field("calculation")
        where field?.Text is not null && Judges.Find(field.Text) is null
        select page.Error(Name, field!.Span, $"`{field!.Text}` is not a calculation",
            NearestWord.HintOrList(field!.Text!, Judges.All.Select(judge => judge.Name)));
}
