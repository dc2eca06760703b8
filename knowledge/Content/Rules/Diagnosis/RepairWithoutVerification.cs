using DxAssistant.Knowledge.Content.Rules.Frame;
using DxAssistant.Knowledge.Content.Syntax;

namespace DxAssistant.Knowledge.Content.Rules.Diagnosis;

/// <summary>A repair that does not say how to see that it worked.</summary>
/// <example>Bad: <c>## Verify without a question</c>. Good: <c>Does the fan hold its speed for ten
/// minutes?</c>.</example>
internal sealed class RepairWithoutVerification : IContentRule
{
    public string Name => "repair-without-verification";

    public string Meaning => "A repair that does not say how to see that it worked.";

    public bool IsAboutFrame => true;

    public RuleExample Bad { get; } = new("repairs/seat-plug.md", """
        ## ⟦Verify⟧
        """);

    public RuleExample Good { get; } = new("repairs/seat-plug.md", """
        ## Verify
        Does the fan hold its speed for ten minutes?
        """);

    public IEnumerable<Diagnostic> Check(Pages pages) => pages.OfKind(PageKind.Repair)
        .Where(repair => repair.Section("Verify") is not { Paragraphs.IsEmpty: false }
            && !MissingHeading.IsMisspelt(repair, "Verify"))
        .Select(repair => repair.Error(Name, repair.Section("Verify")?.Heading.Span ?? repair.IdSpan,
            $"the repair `{repair.Id}` has no verification",
                "ask one question under `## Verify` that a working unit answers with yes"));
}
