using DxAssistant.Knowledge.Content.Constructs;

namespace DxAssistant.Knowledge.Content.Rules.Wording;

/// <summary>
/// A temperature, pressure, length, mass or torque that a question, step or caution gives in one system of units only.
/// </summary>
/// <example>Bad: <c>Stay two metres away.</c>. Good: <c>Stay two metres (6 ft) away.</c>.</example>
internal sealed class UnitAlone : IContentRule
{
    public string Name => "unit-alone";

    public string Meaning =>
        "A temperature, pressure, length, mass or torque that a question, step or caution gives in one system of "
            + "units only.";

    public RuleExample Bad { get; } = new("checks/fan-plug.md", """
        ## How
        1. ⟦Wait until the coil is below 40 °C.⟧
        """);

    public RuleExample Good { get; } = new("checks/fan-plug.md", """
        ## How
        1. Wait until the coil is below 40 °C (104 °F).
        """);

    public IEnumerable<Diagnostic> Check(Pages pages) =>
        from page in pages.All
        from spoken in SpokenText.On(page)
        let alone = UnitPair.All.FirstOrDefault(pair => pair.IsAloneIn(spoken.Text.Text))
        where alone is not null
        select new Diagnostic(Name, Severity.Warning, page.Source.At(spoken.Text.Span),
            $"a {alone.Quantity} in one system of units only",
            "give the other behind it in brackets, rounded as the first is");
}
