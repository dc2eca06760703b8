using DxAssistant.Knowledge.Content.Rules.Frame;
using DxAssistant.Knowledge.Content.Syntax;

namespace DxAssistant.Knowledge.Content.Rules.Units;

/// <summary>A series whose coverage terms nobody can look up.</summary>
/// <example>Bad: <c>## Coverage without a link</c>. Good: <c>- [Coverage of Alder
/// One](../coverage/alder-one.md)</c>.</example>
internal sealed class SeriesWithoutCoverage : IContentRule
{
    public string Name => "series-without-coverage";

    public string Meaning => "A series whose coverage terms nobody can look up.";

    public bool IsAboutFrame => true;

    public RuleExample Bad { get; } = new("series/alder-one.md", """
        ## ⟦Coverage⟧
        As usual.
        """);

    public RuleExample Good { get; } = new("series/alder-one.md", """
        ## Coverage
        - [Coverage of Alder One](../coverage/alder-one.md)
        """);

    public IEnumerable<Diagnostic> Check(Pages pages) => pages.OfKind(PageKind.Series)
        .Where(series => (series.Section("Coverage")?.Items ?? []).Select(item => item.Text).Distinct().Count() != 1
            && !MissingHeading.IsMisspelt(series, "Coverage"))
        .Select(series => series.Error(Name, series.Section("Coverage")?.Heading.Span ?? series.IdSpan,
            $"the series `{series.Id}` has no terms of coverage, or more than one",
            "write one line `- [What is paid](../coverage/ID.md)` under `## Coverage`, with its dash"));
}
