using DxAssistant.Knowledge.Content.Constructs;
using DxAssistant.Knowledge.Content.Syntax;
using DxAssistant.Knowledge.Judging;

namespace DxAssistant.Knowledge.Content.Rules.Calculating;

/// <summary>An input that the calculation cannot do without.</summary>
/// <example>Bad: <c>thermistor-curve without tolerance</c>. Good: <c>| tolerance | 2 K |</c>.</example>
internal sealed class MissingInput : IContentRule
{
    public string Name => "missing-input";

    public string Meaning => "An input that the calculation cannot do without.";

    public RuleExample Bad { get; } = new("checks/room-sensor.md", """
        ## ⟦Expected⟧
        | Input | Value | Source |
        |---|---|---|
        | curve | series room-air-sensor | series page |
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

    public IEnumerable<Diagnostic> Check(Pages pages) =>
        from page in pages.OfKind(PageKind.Check)
        let check = CalculatedCheck.Of(page)
        where check?.Expected is not null
        from need in check!.Judge.Inputs
        where need.Required && !check.Expected!.Rows.Any(row => IsMeant(row, need, check))
        select page.Error(Name, page.Section("Expected")!.Heading.Span,
            $"the input `{need.Name}` of `{check.Judge.Name}` is missing",
            $"add `| {need.Name} | … | … |`: {need.Meaning}");

    // UnknownInput reports a misspelt name and says how to write it.
    private static bool IsMeant(TableRow row, InputNeed need, CalculatedCheck check)
    {
        string name = row.Cell(0)?.Text ?? "";
        string[] names = [.. check.Judge.Inputs.Select(known => known.Name)];
        return name == need.Name || (!names.Contains(name) && NearestWord.Find(name, names) == need.Name);
    }
}
