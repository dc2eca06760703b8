using DxAssistant.Knowledge.Content.Syntax;

namespace DxAssistant.Knowledge.Content.Rules;

/// <summary>A page that no chain of links from the index leads to.</summary>
/// <example>Bad: <c>a page that nothing links to</c>. Good: <c>the page linked from index.md</c>.</example>
internal sealed class UnreachablePage : IContentRule
{
    public string Name => "unreachable-page";

    public string Meaning => "A page that no chain of links from the index leads to.";

    public bool LooksAtAll => true;

    public RuleExample Bad { get; } = new("cautions/hot-pipe.md", """
        ---
        kind: caution
        id: ⟦hot-pipe⟧
        ---
        # Hot pipe

        ## Danger
        It burns.

        ## Do
        - Let it cool.
        """);

    public RuleExample Good { get; } = new("checks/fan-plug.md", """
        ## Cautions
        - [Live mains](../cautions/live-mains.md)
        """);

    public IEnumerable<Diagnostic> Check(Pages pages)
    {
        // The links of an unparsed page are not known.
        if (pages.Single(PageKind.Index) is not { } index || pages.All.Any(page => page.Unparsed is not null))
        {
            return [];
        }

        HashSet<Page> reached = [index, .. pages.MeantByBrokenLinks];
        var ahead = new Queue<Page>(reached);
        while (ahead.TryDequeue(out Page? page))
        {
            foreach (Page next in page.LinkedPaths.OfType<string>().Select(pages.AtPath).OfType<Page>().Where(reached.Add))
            {
                ahead.Enqueue(next);
            }
        }

        // A fault or repair hangs on its symptoms or faults, which FaultWithoutSymptom and RepairWithoutFault look at.
        return pages.All.Where(page => page.Kind is not (null or PageKind.Fault or PageKind.Repair) 
            && !reached.Contains(page) && pages.WithId(page.Kind!.Value, page.Id) == page).Select(page => page.Error(
            Name, page.IdSpan, "no link leads from `index.md` to this page",
                "link to it from `index.md` or from a page that is linked there"));
    }
}
