using DxAssistant.Knowledge.Content.Rules.Linking;
using DxAssistant.Knowledge.Content.Shapes;
using DxAssistant.Knowledge.Content.Syntax;

namespace DxAssistant.Knowledge.Content.Rules.Diagnosis;

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

    public object? Gather(Page page, Pages pages) => Mention.Of(page, pages) with
    {
        IsUnclear = page.Kind == PageKind.Fault
            ? !IsClear(page, pages)
            : page.Kind is null && PageShapes.Of(PageKind.Fault).Holds(page.Path),
        Paths = page.Kind != PageKind.Fault ? []
            : [.. (page.Section("Repair")?.Items ?? []).Select(item => item.Link?.PathFrom(page.Path))
                .OfType<string>()],
        IfNowhere = page.Kind != PageKind.Repair ? null
            : page.Error(Name, page.IdSpan, $"the repair `{page.Id}` cures no fault",
                "link to it under `## Repair` of the faults it cures"),
    };

    // What a link to no repair was meant for is not known, unless it is near; WrongLink or BrokenLink reports it.
    private static bool IsClear(Page fault, Pages pages) =>
        fault.Section("Repair") is { Items: { IsEmpty: false } items }
        && items.All(item => item.Link is { } link && (pages.Target(fault, link, PageKind.Repair) is not null
            || (pages.Target(fault, link) is null && pages.Meant(fault, link) is not null)));

    public IEnumerable<Diagnostic> Conclude(IReadOnlyCollection<object> gathered) =>
        Mention.Nowhere(gathered.Cast<Mention>());
}
