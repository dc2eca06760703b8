using System.Collections.Immutable;
using DxAssistant.Knowledge.Content.Constructs;
using DxAssistant.Knowledge.Content.Rules.Frame;
using DxAssistant.Knowledge.Content.Syntax;

namespace DxAssistant.Knowledge.Content.Rules.Linking;

/// <summary>A link to a page or a heading that does not exist.</summary>
/// <example>Bad: <c>[Live mains](../cautions/live-main.md)</c>. Good: <c>[Live
/// mains](../cautions/live-mains.md)</c>.</example>
internal sealed class BrokenLink : IContentRule
{
    public string Name => "broken-link";

    public string Meaning => "A link to a page or a heading that does not exist.";

    public RuleExample Bad { get; } = new("checks/fan-plug.md", """
        ## Cautions
        - [Live mains](⟦../cautions/live-main.md⟧)
        """);

    public RuleExample Good { get; } = new("checks/fan-plug.md", """
        ## Cautions
        - [Live mains](../cautions/live-mains.md)
        """);

    public ImmutableArray<ExamplePair> More { get; } =
    [
        new ExamplePair(
            new RuleExample("checks/fan-plug.md", """
            ## Cautions
            - [Live mains](⟦../cautions/live-mains.dm⟧)
            """),
            new RuleExample("checks/fan-plug.md", """
            ## Cautions
            - [Live mains](../cautions/live-mains.md)
            """)),
    ];

    public IEnumerable<Diagnostic> Check(Pages pages) =>
        pages.All.SelectMany(page => page.Links.Select(link => Check(pages, page, link)).OfType<Diagnostic>());

    private Diagnostic? Check(Pages pages, Page page, PageLink link)
    {
        if (link.LeadsOutside || MissingPage.Needed.Any(path => path == link.PathFrom(page.Path)
            && pages.AtPath(path) is null))
        {
            return null;
        }

        Page? target = pages.Target(page, link);
        if (target is null)
        {
            if (Strayed.Explains(pages, page, link)) return null;
            return page.Error(Name, link.TargetSpan, $"there is no page `{link.Target.Split('#')[0]}`",
                HelpFor(pages, page, link));
        }

        // The anchors of a page that could not be read are not known.
        bool broken = link.Anchor is { } anchor && target.Kind is not null && !pages.HasAnchor(target, anchor);
        return broken
            ? page.Error(Name, link.TargetSpan, $"`{target.Path}` has no heading `#{link.Anchor}`",
                HelpForAnchor(link, target))
            : null;
    }

    private static Remedy HelpForAnchor(PageLink link, Page target)
    {
        Remedy help = NearestWord.HintOrList(link.Anchor!, Pages.Anchors(target));
        return help
            with { Wrong = link.Target, Instead = help.Instead is { } anchor
                ? $"{link.Target.Split('#')[0]}#{anchor}"
                : null };
    }

    private static Remedy? HelpFor(Pages pages, Page page, PageLink link)
    {
        if (pages.Meant(page, link) is not { } meant) return null;
        string near = PageLink.Between(page.Path, meant.Path);
        // The anchor has to be looked at too: such a link is left to the author.
        return NearestWord.Meant(link.Target, near, link.Anchor is null && Id.IsId(meant.FileId)
            && pages.IsSurelyMeant(page, link, meant) ? near : null);
    }
}
