using DxAssistant.Knowledge.Content.Model;
using DxAssistant.Knowledge.Content.Syntax;

namespace DxAssistant.Knowledge.Content.Rules.Diagnosis;

/// <summary>A mode that no unit has: the check would be left out in every mode that is told.</summary>
/// <example>Bad: <c>modes: [heatin]</c>. Good: <c>modes: [heating]</c>.</example>
internal sealed class UnknownMode : IContentRule
{
    public string Name => "unknown-mode";

    public string Meaning => "A mode that no unit has: the check would be left out in every mode that is told.";

    public bool NeedsFrame => true;

    public RuleExample Bad { get; } = new("checks/fan-plug.md", """
        ---
        kind: check
        id: fan-plug
        minutes: 3
        access: [isolated-open]
        who: technician
        modes: [⟦heatin⟧]
        ---
        """);

    public RuleExample Good { get; } = new("checks/fan-plug.md", """
        ---
        kind: check
        id: fan-plug
        minutes: 3
        access: [isolated-open]
        who: technician
        modes: [heating]
        ---
        """);

    public IEnumerable<Diagnostic> Check(Pages pages) =>
        from check in pages.OfKind(PageKind.Check)
        from mode in check.Front!.Field("modes")?.Values ?? []
        where !UnitModes.All.Contains(mode.Text)
        select check.Error(Name, mode.Span, $"`{mode.Text}` is not a mode",
            NearestWord.HintOrList(mode.Text, UnitModes.All));
}
