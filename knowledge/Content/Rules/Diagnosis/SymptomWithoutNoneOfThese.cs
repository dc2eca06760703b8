using DxAssistant.Knowledge.Content.Rules.Frame;
using DxAssistant.Knowledge.Content.Syntax;

namespace DxAssistant.Knowledge.Content.Rules.Diagnosis;

/// <summary>A symptom that leaves no room for a cause that the pages do not know.</summary>
/// <example>Bad: <c>no row of none-of-these</c>. Good: <c>| [None of these](../faults/none-of-these.md) | seldom
/// |</c>.</example>
internal sealed class SymptomWithoutNoneOfThese : IContentRule
{
    public string Name => "symptom-without-none-of-these";

    public string Meaning => "A symptom that leaves no room for a cause that the pages do not know.";

    public RuleExample Bad { get; } = new("symptoms/fan-not-turning.md", """
        ## ⟦Causes⟧
        | Fault | How often |
        |---|---|
        | [Motor](../faults/fan-motor-failed.md) | often |
        | [Plug](../faults/fan-plug-loose.md) | often |
        """);

    public RuleExample Good { get; } = new("symptoms/fan-not-turning.md", """
        ## Causes
        | Fault | How often |
        |---|---|
        | [Motor](../faults/fan-motor-failed.md) | often |
        | [Plug](../faults/fan-plug-loose.md) | often |
        | [None of these](../faults/none-of-these.md) | seldom |
        """);

    public IEnumerable<Diagnostic> Check(Pages pages) =>
        from symptom in pages.OfKind(PageKind.Symptom)
        let causes = symptom.Section("Causes")
        where causes?.Table is not null
        where !causes!.Table!.Rows.Any(
            row => row.Cell(0)?.Link?.PathFrom(symptom.Path) == $"faults/{MissingPage.NoneOfThese}.md")
        select symptom.Error(Name, causes!.Heading.Span, "the causes do not list `none-of-these`",
            $"add `| [None of these](../faults/{MissingPage.NoneOfThese}.md) | seldom |`");
}
