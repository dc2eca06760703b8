using DxAssistant.Knowledge.Content.Syntax;

namespace DxAssistant.Knowledge.Content.Rules.Diagnosis;

/// <summary>
/// A fault whose part is among the parts of none of its repairs. A warning: the repair may mend it in place.
/// </summary>
/// <example>Bad: <c>part: fan moter</c>, cured by a repair with <c>parts: [fan motor]</c>. Good: <c>part: fan
/// motor</c>.</example>
internal sealed class PartNotReplaced : IContentRule
{
    public string Name => "part-not-replaced";

    public string Meaning =>
        "A fault whose part is among the parts of none of its repairs. A warning: the repair may mend it in place.";

    public RuleExample Bad { get; } = new("faults/fan-motor-failed.md", """
        ---
        kind: fault
        id: fan-motor-failed
        frequency: regular
        part: ⟦indoor fan moter⟧
        ---
        """);

    public RuleExample Good { get; } = new("faults/fan-motor-failed.md", """
        ---
        kind: fault
        id: fan-motor-failed
        frequency: regular
        part: indoor fan motor
        ---
        """);

    public IEnumerable<Diagnostic> Check(Pages pages) =>
        from fault in pages.OfKind(PageKind.Fault)
        let part = fault.Front!.Field("part")
        where part?.Text is not null
            && !fault.Source.ToDos.Any(left => left.Start < part.Span.End && part.Span.Start < left.End)
        let repairs = (fault.Section("Repair")?.Items
            ?? []).Select(item => pages.Target(fault, item.Link, PageKind.Repair)).ToArray()
        where repairs.Length > 0
            && repairs.All(repair => repair?.Front is { Problem: null } front && front.Field("parts") is not null)
        let parts = repairs.SelectMany(repair => repair!.Front?.Field("parts")?.Values ?? [])
            .Select(value => value.Text).ToArray()
        where !parts.Contains(part.Text)
        select fault.Error(Name, part.Span, $"no repair of this fault has the part `{part.Text}`", parts.Length > 0
            ? NearestWord.HintOrList(part.Text!, parts)
            : "write it into `parts` of the repair, or `site: true` here") with { Severity = Severity.Warning };
}
