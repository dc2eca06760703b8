using DxAssistant.Knowledge.Content.Syntax;

namespace DxAssistant.Knowledge.Content.Rules;

/// <summary>A repair that no fault asks for.</summary>
/// <example>Bad: <c>a repair no fault links to</c>. Good: <c>- [Seat the plug](../repairs/seat-plug.md)</c>.</example>
internal sealed class RepairWithoutFault : IContentRule
{
    public string Name => "repair-without-fault";

    public string Meaning => "A repair that no fault asks for.";

    public bool LooksAtAll => true;

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

    public IEnumerable<Diagnostic> Check(Pages pages)
    {
        if (pages.Lacks(PageKind.Fault, page => page.Section("Repair") is { Items.IsEmpty: false }))
        {
            return [];
        }

        HashSet<Page?> used = [.. pages.MeantByBrokenLinks, .. pages.OfKind(PageKind.Fault).SelectMany(fault =>
            fault.Section("Repair")?.Items.Select(item => pages.Target(fault, item.Link)) ?? [])];
        return pages.OfKind(PageKind.Repair).Where(repair => !used.Contains(repair)).Select(repair => repair.Error(
            Name, repair.IdSpan, $"the repair `{repair.Id}` cures no fault",
                "link to it under `## Repair` of the faults it cures"));
    }
}
