using DxAssistant.Knowledge.Content.Syntax;

namespace DxAssistant.Knowledge.Content.Rules.Diagnosis;

/// <summary>A fault that is neither a part nor the site, or both.</summary>
/// <example>Bad: <c>neither part nor site</c>. Good: <c>site: true</c>.</example>
internal sealed class PartAndSite : IContentRule
{
    public string Name => "part-and-site";

    public string Meaning => "A fault that is neither a part nor the site, or both.";

    public bool NeedsFrame => true;

    public RuleExample Bad { get; } = new("faults/fan-plug-loose.md", """
        ---
        kind: fault
        id: ⟦fan-plug-loose⟧
        frequency: regular
        ---
        """);

    public RuleExample Good { get; } = new("faults/fan-plug-loose.md", """
        ---
        kind: fault
        id: fan-plug-loose
        frequency: regular
        site: true
        ---
        """);

    public IEnumerable<Diagnostic> Check(Pages pages) =>
        from fault in pages.OfKind(PageKind.Fault)
        let part = fault.Front!.Field("part") is { Values.IsEmpty: false }
        let site = fault.Front!.Field("site")?.Text == "true"
        where part == site
        select fault.Error(Name, fault.IdSpan,
            part ? "the fault is a part and the site" : "the fault is neither a part nor the site",
            "write `part: …` when a part has failed, `site: true` when none has");
}
