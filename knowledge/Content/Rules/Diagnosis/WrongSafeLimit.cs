using DxAssistant.Knowledge.Content.Constructs;
using DxAssistant.Knowledge.Content.Syntax;

namespace DxAssistant.Knowledge.Content.Rules.Diagnosis;

/// <summary>A safety step whose reading or limit cannot be read, or has one without the other.</summary>
/// <example>Bad: <c>below 5</c>. Good: <c>at most 5 V</c>.</example>
internal sealed class WrongSafeLimit : IContentRule
{
    public string Name => "wrong-safe-limit";

    public string Meaning => "A safety step whose reading or limit cannot be read, or has one without the other.";

    public RuleExample Bad { get; } = new("access/isolated-open.md", """
        ## Steps
        | Do | Reading | Safe when |
        |---|---|---|
        | Measure the supply. | supply voltage | ⟦below 5⟧ |
        """);

    public RuleExample Good { get; } = new("access/isolated-open.md", """
        ## Steps
        | Do | Reading | Safe when |
        |---|---|---|
        | Measure the supply. | supply voltage | at most 5 V |
        """);

    public IEnumerable<Diagnostic> Check(Pages pages) =>
        from page in pages.OfKind(PageKind.Access)
        let table = page.Section("Steps")?.Table
        where table is not null
        from row in table.Rows
        where row.Cells.Length == 3
        let found = Check(page, row.Cells[1], row.Cells[2])
        where found is not null
        select found;

    private Diagnostic? Check(Page page, RichText reading, RichText limit)
    {
        if (reading.IsEmpty != limit.IsEmpty)
        {
            return page.Error(Name, reading.IsEmpty ? limit.Span : reading.Span,
                "a reading and its limit stand together",
                "fill both cells, or leave both empty");
        }

        return limit.IsEmpty || SafeWhen.Read(limit.Text) is not null
            ? null
            : page.Error(Name, limit.Span, $"`{limit.Text}` is not a limit", "write `at most 30 V`");
    }
}
