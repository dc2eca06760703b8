namespace DxAssistant.Knowledge.Content.Rules.Frame;

/// <summary>Two headings of one page with the same anchor.</summary>
/// <example>Bad: <c>## Ask twice</c>. Good: <c>## Ask once</c>.</example>
internal sealed class RepeatedHeading : IContentRule
{
    public string Name => "repeated-heading";

    public string Meaning => "Two headings of one page with the same anchor.";

    public bool IsAboutFrame => true;

    public RuleExample Bad { get; } = new("checks/fan-plug.md", """
        ## Ask
        Is the plug home?

        ## ⟦Ask⟧
        Is the pin straight?
        """);

    public RuleExample Good { get; } = new("checks/fan-plug.md", """
        ## Ask
        Is the plug home?
        """);

    public IEnumerable<Diagnostic> Check(Pages pages) =>
        from page in pages.All
        where page.Kind is not null
        from same in page.WrittenSections.Where(section => section.Level == 2).GroupBy(section => Slug.Of(section.Name))
        from section in same.Skip(1)
        select page.Error(Name, section.Heading.Span, $"the heading `{section.Name}` stands twice in the page");
}
