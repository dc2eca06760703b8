using DxAssistant.Knowledge.Content.Syntax;

namespace DxAssistant.Knowledge.Content.Rules.Diagnosis;

/// <summary>
/// A check whose <c>leaves</c> names more than one access state: the unit stands in one once it is done.
/// </summary>
/// <example>Bad: <c>leaves: [on-trial, closed-running]</c>. Good: <c>leaves: closed-running</c>.</example>
internal sealed class TwoStatesLeft : IContentRule
{
    public string Name => "two-states-left";

    public string Meaning =>
        "A check whose `leaves` names more than one access state: the unit stands in one once it is done.";

    public bool NeedsFrame => true;

    public RuleExample Bad { get; } = new("checks/fan-plug.md", """
        ---
        kind: check
        id: fan-plug
        minutes: 12
        access: [isolated-open]
        leaves: [⟦closed-running, isolated-open⟧]
        who: technician
        ---
        """);

    public RuleExample Good { get; } = new("checks/fan-plug.md", """
        ---
        kind: check
        id: fan-plug
        minutes: 12
        access: [isolated-open]
        leaves: closed-running
        who: technician
        ---
        """);

    public IEnumerable<Diagnostic> Check(Pages pages) =>
        from check in pages.OfKind(PageKind.Check)
        let states = check.Front!.Field("leaves")
        where states is { Values.Length: > 1 }
        select check.Error(Name, states.Span, "the check is said to leave the unit in more than one access state",
            "write the one in which the unit stands when the question is answered");
}
