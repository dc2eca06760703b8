using DxAssistant.Knowledge.Content.Constructs;
using DxAssistant.Knowledge.Content.Syntax;

namespace DxAssistant.Knowledge.Content.Rules.Frame;

/// <summary>Two rows of a table with the same first cell.</summary>
/// <example>Bad: <c>two rows [Plug](…)</c>. Good: <c>one row [Plug](…)</c>.</example>
internal sealed class RepeatedRow : IContentRule
{
    public string Name => "repeated-row";

    public string Meaning => "Two rows of a table with the same first cell.";

    public RuleExample Bad { get; } = new("checks/fan-plug.md", """
        ## Likelihoods
        | Fault | home | loose |
        |---|---|---|
        | [Plug](../faults/fan-plug-loose.md) | never | always |
        | ⟦[The plug](../faults/fan-plug-loose.md)⟧ | never | always |
        | [Motor](../faults/fan-motor-failed.md) | 0.97 | 0.03 |
        | every other fault | always | never |
        """);

    public RuleExample Good { get; } = new("checks/fan-plug.md", """
        ## Likelihoods
        | Fault | home | loose |
        |---|---|---|
        | [Plug](../faults/fan-plug-loose.md) | never | always |
        | [Motor](../faults/fan-motor-failed.md) | 0.97 | 0.03 |
        | every other fault | always | never |
        """);

    public IEnumerable<Diagnostic> Check(Pages pages) =>
        from page in pages.All
        where page.Kind is not null
        from section in page.Sections
        where IsKeyed(section.Name)
        from table in section.Tables
        from same in table.Rows.Where(row => !row.Cells.IsEmpty && !row.Cells[0].IsEmpty)
            .GroupBy(row => Key(page, row.Cells[0]))
        from row in same.Skip(1)
        select page.Error(Name, row.Cells[0].Span, $"`{row.Cells[0].Text}` stands twice in the table");

    private static bool IsKeyed(string section) =>
        section is "Likelihoods" or "Causes" or "Outcomes" or "Expected" or "Readings"
        or "Ratings" or "Terminals" or "Ways here" or "Roles" or "Frequencies" or "Prices"
        or SettingsTable.Heading or SettingsTable.RulesHeading;

    // Two links to one page are the same, whatever they show.
    private static string Key(Page page, RichText cell) => cell.Link?.PathFrom(page.Path) ?? cell.Text;
}
