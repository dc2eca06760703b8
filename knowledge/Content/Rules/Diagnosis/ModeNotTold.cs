using System.Collections.Immutable;
using DxAssistant.Knowledge.Content.Constructs;
using DxAssistant.Knowledge.Content.Model;
using DxAssistant.Knowledge.Content.Syntax;

namespace DxAssistant.Knowledge.Content.Rules.Diagnosis;

/// <summary>A check that <c>tells-mode</c>, and none of whose outcomes is named as a mode.</summary>
/// <example>Bad: <c>tells-mode: true</c> with the outcomes home and loose. Good: no such field.</example>
internal sealed class ModeNotTold : IContentRule
{
    public string Name => "mode-not-told";

    public string Meaning => "A check that `tells-mode`, and none of whose outcomes is named as a mode.";

    public bool NeedsFrame => true;

    public RuleExample Bad { get; } = new("checks/fan-plug.md", """
        ---
        kind: check
        id: fan-plug
        minutes: 3
        access: [isolated-open]
        who: technician
        tells-mode: ⟦true⟧
        ---
        """);

    public RuleExample Good { get; } = new("checks/fan-plug.md", """
        ---
        kind: check
        id: fan-plug
        minutes: 3
        access: [isolated-open]
        who: technician
        ---
        """);

    public IEnumerable<Diagnostic> Check(Pages pages) =>
        from check in pages.OfKind(PageKind.Check)
        let tells = check.Front!.Field("tells-mode")
        where tells?.Text == "true"
        let outcomes = OutcomeTable.Of(check)
        where outcomes is not null && !outcomes.Rows.Any(row => UnitModes.All.Contains(row.Id.Text))
        select check.Error(Name, tells.Span, "no outcome of this check is named as a mode",
            $"name outcomes {string.Join(", ", UnitModes.All.Select(mode => $"`{mode}`"))}, or leave the field out");
}
