using DxAssistant.Knowledge.Content.Rules.Frame;
using DxAssistant.Knowledge.Content.Syntax;

namespace DxAssistant.Knowledge.Content.Rules.Diagnosis;

/// <summary>A fault that no repair cures.</summary>
/// <example>Bad: <c>## Repair without a link</c>. Good: <c>- [Seat the plug](../repairs/seat-plug.md)</c>.</example>
internal sealed class FaultWithoutRepair : IContentRule
{
    public string Name => "fault-without-repair";

    public string Meaning => "A fault that no repair cures.";

    public bool IsAboutFrame => true;

    public RuleExample Bad { get; } = new("faults/fan-plug-loose.md", """
        ## ⟦Repair⟧
        Nothing helps.
        """);

    public RuleExample Good { get; } = new("faults/fan-plug-loose.md", """
        ## Repair
        - [Seat the plug](../repairs/seat-plug.md)
        """);

    public IEnumerable<Diagnostic> Check(Pages pages) => pages.OfKind(PageKind.Fault)
        .Where(fault => fault.Section("Repair") is not { Items.IsEmpty: false }
            && !MissingHeading.IsMisspelt(fault, "Repair"))
        .Select(fault => fault.Error(Name, fault.Section("Repair")?.Heading.Span ?? fault.IdSpan,
            $"no repair cures the fault `{fault.Id}`",
            "list links to repairs under `## Repair`"));
}
