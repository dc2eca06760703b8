using DxAssistant.Knowledge.Content.Syntax;

namespace DxAssistant.Knowledge.Content.Rules.Diagnosis;

/// <summary>
/// A symptom that a check names both in <c>only-at</c> and in <c>not-at</c>: it is never asked there.
/// </summary>
/// <example>Bad: <c>only-at: [no-cooling]</c> beside <c>not-at: [no-cooling]</c>. Good: <c>only-at:
/// [no-cooling]</c>.</example>
/// <remarks>
/// Both fields beside each other are right where a second symptom bars the check, such as a sign of danger.
/// </remarks>
internal sealed class OnlyAtAndNotAt : IContentRule
{
    public string Name => "only-at-and-not-at";

    public string Meaning => "A symptom that a check names both in `only-at` and in `not-at`: it is never asked there.";

    public bool NeedsFrame => true;

    public RuleExample Bad { get; } = new("checks/fan-plug.md", """
        ---
        kind: check
        id: fan-plug
        minutes: 3
        access: [isolated-open]
        who: technician
        only-at: [fan-not-turning]
        not-at: [⟦fan-not-turning⟧]
        ---
        """);

    public RuleExample Good { get; } = new("checks/fan-plug.md", """
        ---
        kind: check
        id: fan-plug
        minutes: 3
        access: [isolated-open]
        who: technician
        only-at: [fan-not-turning]
        ---
        """);

    public IEnumerable<Diagnostic> Check(Pages pages) =>
        from check in pages.OfKind(PageKind.Check)
        let asked = (check.Front!.Field("only-at")?.Values ?? []).Select(symptom => symptom.Text).ToArray()
        from barred in check.Front!.Field("not-at")?.Values ?? []
        where asked.Contains(barred.Text)
        select check.Error(Name, barred.Span, $"`only-at` names `{barred.Text}` too", "take it out of one of the two");
}
