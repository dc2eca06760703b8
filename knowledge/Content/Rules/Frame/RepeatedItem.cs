using DxAssistant.Knowledge.Content.Syntax;

namespace DxAssistant.Knowledge.Content.Rules.Frame;

/// <summary>A list that says the same twice, or a section that shows the same picture twice.</summary>
/// <example>Bad: <c>two items `Find the plug.`</c>. Good: <c>one item `Find the plug.`</c>.</example>
internal sealed class RepeatedItem : IContentRule
{
    public string Name => "repeated-item";

    public string Meaning => "A list that says the same twice, or a section that shows the same picture twice.";

    public RuleExample Bad { get; } = new("checks/fan-plug.md", """
        ## How
        1. Find the plug.
        2. ⟦Find the plug.⟧
        """);

    public RuleExample Good { get; } = new("checks/fan-plug.md", """
        ## How
        1. Find the plug.
        2. Press it home.
        """);

    public IEnumerable<Diagnostic> Check(Pages pages) => Items(pages).Concat(Pictures(pages));

    private IEnumerable<Diagnostic> Items(Pages pages) =>
        from page in pages.All
        where page.Kind is not (null or PageKind.Index)
        from section in page.Sections
        from same in section.Items.Where(item => !item.IsEmpty).GroupBy(item => item.Text)
        from item in same.Skip(1)
        select page.Error(Name, item.Span, "the list says this twice");

    private IEnumerable<Diagnostic> Pictures(Pages pages) =>
        from page in pages.All
        from section in page.Sections
        from same in section.Pictures.GroupBy(picture => picture.Target)
        from picture in same.Skip(1)
        select page.Error(Name, picture.Span, "the section shows this picture twice");
}
