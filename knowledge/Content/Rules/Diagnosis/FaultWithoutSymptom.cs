using DxAssistant.Knowledge.Content.Rules.Linking;
using DxAssistant.Knowledge.Content.Shapes;
using DxAssistant.Knowledge.Content.Syntax;

namespace DxAssistant.Knowledge.Content.Rules.Diagnosis;

/// <summary>A fault that no symptom lists, so that no conversation can arrive at it.</summary>
/// <example>Bad: <c>a fault in no table of causes</c>. Good: <c>| [Plug](../faults/fan-plug-loose.md) | often
/// |</c>.</example>
internal sealed class FaultWithoutSymptom : IGatheringRule
{
    public string Name => "fault-without-symptom";

    public string Meaning => "A fault that no symptom lists, so that no conversation can arrive at it.";

    public RuleExample Bad { get; } = new("symptoms/fan-not-turning.md", """
        ## Causes
        | Fault | How often |
        |---|---|
        | [Motor](../faults/fan-motor-failed.md) | often |
        | [None of these](../faults/none-of-these.md) | seldom |
        """);

    public RuleExample Good { get; } = new("symptoms/fan-not-turning.md", """
        ## Causes
        | Fault | How often |
        |---|---|
        | [Motor](../faults/fan-motor-failed.md) | often |
        | [Plug](../faults/fan-plug-loose.md) | often |
        | [None of these](../faults/none-of-these.md) | seldom |
        """);

    public object? Gather(Page page, Pages pages) => Mention.Of(page, pages) with
    {
        IsUnclear = page.Kind == PageKind.Symptom
            ? page.Section("Causes")?.Table is null
            : page.Kind is null && PageShapes.Of(PageKind.Symptom).Holds(page.Path),
        Paths = page.Kind != PageKind.Symptom ? []
            : [.. (page.Section("Causes")?.Table?.Rows ?? []).Select(row => row.Cell(0)?.Link?.PathFrom(page.Path))
                .OfType<string>()],
        IfNowhere = page.Kind != PageKind.Fault ? null
            : page.Error(Name, page.IdSpan, $"no symptom lists the fault `{page.Id}`",
                "add it to the `## Causes` of a symptom"),
    };

    public IEnumerable<Diagnostic> Conclude(IReadOnlyCollection<object> gathered) =>
        Mention.Nowhere(gathered.Cast<Mention>());
}
