using DxAssistant.Knowledge.Content.Syntax;

namespace DxAssistant.Knowledge.Content.Rules.Diagnosis;

/// <summary>A repair whose <c>verify-in</c> names more than one access state: its trial is made in one.</summary>
/// <example>Bad: <c>verify-in: [gauges-on, closed-running]</c>. Good: <c>verify-in: gauges-on</c>.</example>
internal sealed class TwoTrialStates : IContentRule
{
    public string Name => "two-trial-states";

    public string Meaning => "A repair whose `verify-in` names more than one access state: its trial is made in one.";

    public bool NeedsFrame => true;

    public RuleExample Bad { get; } = new("repairs/seat-plug.md", """
        ---
        kind: repair
        id: seat-plug
        minutes: 5
        verify-minutes: 10
        access: [isolated-open]
        who: technician
        parts: []
        verify-in: [⟦closed-running, isolated-open⟧]
        ---
        """);

    public RuleExample Good { get; } = new("repairs/seat-plug.md", """
        ---
        kind: repair
        id: seat-plug
        minutes: 5
        verify-minutes: 10
        access: [isolated-open]
        who: technician
        parts: []
        verify-in: closed-running
        ---
        """);

    public IEnumerable<Diagnostic> Check(Pages pages) =>
        from repair in pages.OfKind(PageKind.Repair)
        let states = repair.Front!.Field("verify-in")
        where states is { Values.Length: > 1 }
        select repair.Error(Name, states.Span, "the trial run is given more than one access state",
            "write the one in which what the question asks for is read");
}
