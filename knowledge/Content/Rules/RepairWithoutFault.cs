using DxAssistant.Knowledge.Content.Syntax;

namespace DxAssistant.Knowledge.Content.Rules;

/// <summary>A repair that no fault asks for.</summary>
/// <example>Bad: <c>a repair no fault links to</c>. Good: <c>- [Seat the plug](../repairs/seat-plug.md)</c>.</example>
internal sealed class RepairWithoutFault : IGatheringRule
{
    public string Name => "repair-without-fault";

    public string Meaning => "A repair that no fault asks for.";

    public RuleExample Bad { get; } = new("repairs/paint-it.md", """
        ---
        kind: repair
        id: ⟦paint-it⟧
        minutes: 5
        verify-minutes: 1
        access: [closed-running]
        who: owner
        ---
        # Paint it

        ## Steps
        1. Paint.

        ## Verify
        Is it dry?

        ## Sources
        - [Common practice](../sources.md#common-practice)
        """);

    public RuleExample Good { get; } = new("faults/fan-plug-loose.md", """
        ## Repair
        - [Seat the plug](../repairs/seat-plug.md)
        """);

    public object? Gather(Page page, Pages pages) => page.Kind != PageKind.Fault ? null
        : page.Section("Repair")?.Items.Select(item => item.Link is { LeadsOutside: false } link ? link.PathFrom(page.Path) : null).OfType<string>().ToArray();

    public IEnumerable<Diagnostic> Conclude(Pages pages, IReadOnlyCollection<object> gathered)
    {
        if (pages.Lacks(PageKind.Fault, page => page.Section("Repair") is { Items.IsEmpty: false })) return [];
        HashSet<string> used = [.. gathered.Cast<string[]>().SelectMany(paths => paths)];
        return pages.OfKind(PageKind.Repair).Where(repair => !used.Contains(repair.Path) && !pages.MeantByBrokenLinks.Contains(repair))
            .Select(repair => repair.Error(
                Name, repair.IdSpan, $"the repair `{repair.Id}` cures no fault",
                "link to it under `## Repair` of the faults it cures"));
    }
}
