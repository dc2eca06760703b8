using System.Collections.Immutable;
using DxAssistant.Knowledge.Content.Constructs;
using DxAssistant.Knowledge.Content.Syntax;

namespace DxAssistant.Knowledge.Content.Rules.Hazards;

/// <summary>A check, repair or access state with a hazard whose caution it does not link.</summary>
/// <remarks>
/// The pages of cautions say what tells of their hazard: words of a step, and access states in which it is always
/// there. A caution that stands in for another on its page answers for it.
/// </remarks>
/// <example>Bad: <c>Open the terminal box.</c> on a page without <c>## Cautions</c>. Good: the same with
/// <c>- [Live mains](../cautions/live-mains.md)</c>.</example>
internal sealed class HazardWithoutCaution : IContentRule
{
    public string Name => "hazard-without-caution";

    public string Meaning => "A check, repair or access state with a hazard whose caution it does not link.";

    public bool NeedsFrame => true;

    public RuleExample Bad { get; } = new("checks/board-supply.md", """
        ## How
        1. Open the ⟦terminal box⟧.
        2. Measure between the two marked points.
        """);

    public RuleExample Good { get; } = new("checks/board-supply.md", """
        ## How
        1. Open the terminal box.
        2. Measure between the two marked points.

        ## Cautions
        - [Live mains](../cautions/live-mains.md)
        """);

    public ImmutableArray<ExamplePair> More { get; } =
    [
        new ExamplePair(
            new RuleExample("cautions/live-mains.md", """
            ---
            kind: caution
            id: live-mains
            states: [closed-running]
            ---
            """),
            new RuleExample("cautions/live-mains.md", """
            ---
            kind: caution
            id: live-mains
            ---
            """)),
    ];

    public IEnumerable<Diagnostic> Check(Pages pages) =>
        from page in new[] { PageKind.Access, PageKind.Check, PageKind.Repair }.SelectMany(kind => pages.OfKind(kind))
        let warned = CautionsOf(page, pages)
        from caution in pages.EveryOfKind(PageKind.Caution)
        where !warned.Any(known => known.Id == caution.Id || List(known, "instead-of").Contains(caution.Id))
        let sign = WordIn(page, caution) ?? StateOf(page, caution)
        where sign is not null
        select page.Error(Name, sign.At, $"{sign.Said}, and the page does not link the caution `{caution.Id}`",
            $"add `- [{caution.Title?.Heading.Text ?? caution.Id}](../{caution.Path})` under `## Cautions`");

    private static ImmutableArray<Page> CautionsOf(Page page, Pages pages) =>
    [
        .. (page.Section("Cautions")?.Items ?? []).Select(item => pages.Target(page, item.Link, PageKind.Caution))
            .OfType<Page>(),
    ];

    private static Sign? WordIn(Page page, Page caution) => (
        from spoken in SpokenText.On(page)
        from word in List(caution, "words")
        let at = WholeWord.Find(spoken.Text.Text, word)
        where at >= 0
        select new Sign($"the words tell of `{word}`", Place(spoken.Text, at, word.Length))).FirstOrDefault();

    private static Sign? StateOf(Page page, Page caution)
    {
        IEnumerable<string> states = page.Kind == PageKind.Access ? [page.Id] : List(page, "access");
        if (!states.Any() || !states.All(state => List(caution, "states").Contains(state))) return null;
        TextSpan at = page.Kind == PageKind.Access ? page.IdSpan : page.Front!.Field("access")!.Span;
        return new Sign("the hazard is always there in this access state", at);
    }

    // Where markup makes the text shorter than what is written, the whole of it is marked.
    private static TextSpan Place(RichText text, int at, int length) =>
        text.Span.Length == text.Text.Length ? new TextSpan(text.Span.Start + at, length) : text.Span;

    private static IEnumerable<string> List(Page page, string field) =>
        page.Front?.Field(field)?.Values.Select(value => value.Text) ?? [];

    /// <summary>What tells of a hazard, and where.</summary>
    private sealed record Sign(string Said, TextSpan At);
}
