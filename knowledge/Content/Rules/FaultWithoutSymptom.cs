using DxAssistant.Knowledge.Content.Syntax;

namespace DxAssistant.Knowledge.Content.Rules;

/// <summary>A fault that no symptom lists, so that no conversation can arrive at it.</summary>
/// <example>Bad: <c>a fault in no table of causes</c>. Good: <c>| [Plug](../faults/fan-plug-loose.md) | often |</c>.</example>
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

    public object? Gather(Page page, Pages pages) => page.Kind != PageKind.Symptom ? null
        : page.Section("Causes")?.Table?.Rows.Select(row => row.Cell(0)?.Link is { LeadsOutside: false } link ? link.PathFrom(page.Path) : null).OfType<string>().ToArray();

    public IEnumerable<Diagnostic> Conclude(Pages pages, IReadOnlyCollection<object> gathered)
    {
        if (pages.Lacks(PageKind.Symptom, page => page.Section("Causes")?.Table is not null)) return [];
        HashSet<string> listed = [.. gathered.Cast<string[]>().SelectMany(paths => paths)];
        return pages.OfKind(PageKind.Fault).Where(fault => !listed.Contains(fault.Path) && !pages.MeantByBrokenLinks.Contains(fault))
            .Select(fault => fault.Error(
                Name, fault.IdSpan, $"no symptom lists the fault `{fault.Id}`", "add it to the `## Causes` of a symptom"));
    }
}
