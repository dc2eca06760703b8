using DxAssistant.Knowledge.Content.Rules.Frame;
using DxAssistant.Knowledge.Content.Syntax;

namespace DxAssistant.Knowledge.Content.Rules.Numbers;

/// <summary>A page whose numbers (minutes, likelihoods, a curve, safe limits) have no source.</summary>
/// <example>Bad: <c>a curve without ## Sources</c>. Good: <c>- [Common
/// practice](../sources.md#common-practice)</c>.</example>
internal sealed class PageWithoutSource : IContentRule
{
    public string Name => "page-without-source";

    public string Meaning => "A page whose numbers (minutes, likelihoods, a curve, safe limits) have no source.";

    public RuleExample Bad { get; } = new("curves/room-10k.md", """
        ---
        kind: curve
        id: room-10k
        ---
        # ⟦10 kΩ room sensor⟧

        ## Table
        | °C | kΩ |
        |---|---|
        | 0 | 32.65 |
        | 25 | 10 |
        """);

    public RuleExample Good { get; } = new("curves/room-10k.md", """
        ---
        kind: curve
        id: room-10k
        ---
        # 10 kΩ room sensor

        ## Table
        | °C | kΩ |
        |---|---|
        | 0 | 32.65 |
        | 25 | 10 |

        ## Sources
        - [Common practice](../sources.md#common-practice)
        """);

    public bool IsAboutFrame => true;

    public IEnumerable<Diagnostic> Check(Pages pages) =>
        from page in pages.All
        where page.Kind is not null && page.Section("Sources") is null && !MissingHeading.IsMisspelt(page, "Sources")
        let number = NumberOf(page)
        where number is not null
        select page.Error(Name, number.Span, "the numbers of this page have no source",
            "add `## Sources` with `- [Common practice](../sources.md#common-practice)` or the document");

    // Where a number stands for which the kind of page has no column of sources.
    private static RichText? NumberOf(Page page) => page.Kind switch
    {
        PageKind.Curve or PageKind.Check or PageKind.Repair or PageKind.Coverage => page.Title?.Heading,
        PageKind.Access => page.Section("Steps")?.Table?.Rows.Select(row => row.Cell(2))
            .FirstOrDefault(cell => cell?.Text.Any(char.IsAsciiDigit) == true),
        _ => null,
    };
}
