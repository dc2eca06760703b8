using DxAssistant.Knowledge.Content.Syntax;

namespace DxAssistant.Knowledge.Content.Rules.Units;

/// <summary>Parts in a class that has no term of coverage.</summary>
/// <example>Bad: <c>| electronix | indoor board |</c>. Good: <c>| electronics | indoor board |</c>.</example>
internal sealed class UnknownPartClass : IContentRule
{
    public string Name => "unknown-part-class";

    public string Meaning => "Parts in a class that has no term of coverage.";

    public RuleExample Bad { get; } = new("coverage/alder-one.md", """
        ## Classes
        | Part class | Parts |
        |---|---|
        | ⟦electronix⟧ | room sensor |
        """);

    public RuleExample Good { get; } = new("coverage/alder-one.md", """
        ## Classes
        | Part class | Parts |
        |---|---|
        | electronics | room sensor |
        """);

    public IEnumerable<Diagnostic> Check(Pages pages) =>
        from page in pages.OfKind(PageKind.Coverage)
        let terms = page.Section("Parts")?.Table
        let classes = page.Section("Classes")?.Table
        where terms is not null && classes is not null
        let known = terms.Rows.Select(row => row.Cell(0)?.Text ?? "").ToArray()
        from row in classes.Rows
        let name = row.Cell(0)
        where name is { IsEmpty: false } && !known.Contains(name.Text)
        select page.Error(Name, name!.Span, $"`{name.Text}` has no term under `## Parts`",
            NearestWord.HintOrList(name.Text, known));
}
