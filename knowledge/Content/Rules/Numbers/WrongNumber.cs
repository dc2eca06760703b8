using DxAssistant.Knowledge.Content.Constructs;
using DxAssistant.Knowledge.Content.Syntax;

namespace DxAssistant.Knowledge.Content.Rules.Numbers;

/// <summary>A table cell that must be a number and is not, or is out of its range.</summary>
/// <example>Bad: <c>| [Closed and running](…) | eight |</c>. Good: <c>| [Closed and running](…) | 8 |</c>.</example>
internal sealed class WrongNumber : IContentRule
{
    public string Name => "wrong-number";

    public string Meaning => "A table cell that must be a number and is not, or is out of its range.";

    public RuleExample Bad { get; } = new("access/isolated-open.md", """
        ## Ways here
        | From | Minutes |
        |---|---|
        | [Closed and running](closed-running.md) | ⟦eight⟧ |
        """);

    public RuleExample Good { get; } = new("access/isolated-open.md", """
        ## Ways here
        | From | Minutes |
        |---|---|
        | [Closed and running](closed-running.md) | 8 |
        """);

    public IEnumerable<Diagnostic> Check(Pages pages) =>
        from page in pages.All
        let columns = ColumnsOf(page.Kind)
        from section in page.Sections
        from wanted in columns
        where wanted.Section == section.Name && section.Table is not null
        from row in section.Table!.Rows
        let cell = row.Cell(section.Table!.Column(wanted.Head))
        where cell is { IsEmpty: false } && !wanted.Fits(Number.Read(cell.Text))
        select page.Error(Name, cell!.Span, $"`{cell.Text}` is not {wanted.Range}");

    private static Column[] ColumnsOf(PageKind? kind) => kind switch
    {
        PageKind.Words =>
        [
            new("Likelihoods", "Value", value => value is > 0 and < 1, "a number above 0 and below 1"),
            new("Frequencies", "Value", value => value is > 0 and <= 1000, "a number above 0, to 1000"),
            new(EarlierTable.Heading, EarlierTable.Within, value => value is >= 1 and <= 3650
                && value % 1 == 0, "a whole number of days, 1 to 3650"),
            new(EarlierTable.Heading, EarlierTable.Same, IsOdds, Odds),
            new(EarlierTable.Heading, EarlierTable.Left, IsOdds, Odds),
            new("Prices", "Value", value => value is >= 0 and <= 1440, "a number of minutes, 0 to 1440"),
        ],
        PageKind.Roles => [new("Roles", "Rank", value => value is >= 0 and <= 9 && value % 1 == 0,
            "a whole number, 0 to 9")],
        PageKind.Access => [new("Ways here", "Minutes", value => value is >= 0 and <= 1440,
            "a number of minutes, 0 to 1440")],
        PageKind.Coverage =>
        [
            new("Parts", "Months", IsMonths, Months), new("Parts", "Registered", IsMonths, Months),
            new("Labour", "Minutes", value => value is >= 0 and <= 1440, "a number of minutes, 0 to 1440"),
        ],
        _ => [],
    };

    private const string Odds = "a factor from 0.01 to 100";

    private static bool IsOdds(double? value) => value is >= 0.01 and <= 100;

    private const string Months = "a whole number of months, 0 to 600";

    private static bool IsMonths(double? value) => value is >= 0 and <= 600 && value % 1 == 0;

    private sealed record Column(string Section, string Head, Func<double?, bool> Fits, string Range);
}
