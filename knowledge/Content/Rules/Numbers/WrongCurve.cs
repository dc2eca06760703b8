using DxAssistant.Knowledge.Content.Constructs;
using DxAssistant.Knowledge.Content.Syntax;

namespace DxAssistant.Knowledge.Content.Rules.Numbers;

/// <summary>A sensor curve that cannot be read, or turns back on itself.</summary>
/// <example>Bad: <c>| 25 | ten |</c>. Good: <c>| 25 | 10 |</c>.</example>
internal sealed class WrongCurve : IContentRule
{
    public string Name => "wrong-curve";

    public string Meaning => "A sensor curve that cannot be read, or turns back on itself.";

    public RuleExample Bad { get; } = new("curves/room-10k.md", """
        ## Table
        | °C | kΩ |
        |---|---|
        | 0 | 32.65 |
        | 25 | ⟦ten⟧ |
        """);

    public RuleExample Good { get; } = new("curves/room-10k.md", """
        ## Table
        | °C | kΩ |
        |---|---|
        | 0 | 32.65 |
        | 25 | 10 |
        """);

    public IEnumerable<Diagnostic> Check(Pages pages) => pages.OfKind(PageKind.Curve)
        .Where(page => page.Sections.All(section => section.Table is not null
            || !CurveReader.Headings.Contains(section.Name)))
        .Select(page => (page, Problem: CurveReader.Read(page, out _)))
        .Where(pair => pair.Problem is not null)
        .Select(pair => pair.page.Error(Name, pair.Problem!.At, pair.Problem.Message,
            "a curve is one of `## Table` (°C and kΩ), `## Steinhart–Hart` (A, B, C) and `## Beta` (R25, B)"));
}
