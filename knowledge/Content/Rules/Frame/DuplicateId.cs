namespace DxAssistant.Knowledge.Content.Rules.Frame;

/// <summary>Two pages of one kind with the same id.</summary>
/// <example>Bad: <c>two pages with id: live-mains</c>. Good: <c>one page with id: live-mains</c>.</example>
internal sealed class DuplicateId : IContentRule
{
    public string Name => "duplicate-id";

    public string Meaning => "Two pages of one kind with the same id.";

    public bool LooksAtAll => true;

    public RuleExample Bad { get; } = new("cautions/again/live-mains.md", """
        ---
        kind: caution
        id: ⟦live-mains⟧
        ---
        # Live mains

        ## Danger
        It can kill.

        ## Do
        - Isolate.
        """);

    public RuleExample Good { get; } = new("cautions/again/live-mains.md", "");

    public IEnumerable<Diagnostic> Check(Pages pages) => !pages.HaveAnIdTwice ? [] : pages.All
        .Where(page => page.Kind is { } kind && pages.WithId(kind, page.Id) != page)
        .Select(page => page.Error(Name, page.IdSpan,
            $"the id `{page.Id}` is also that of `{pages.WithId(page.Kind!.Value, page.Id)!.Path}`"));
}
