using System.Collections.Immutable;
using DxAssistant.Knowledge.Content.Shapes;
using DxAssistant.Knowledge.Content.Syntax;

namespace DxAssistant.Knowledge.Content.Rules.Linking;

/// <summary>
/// A front matter that names a role, access state, series, fault, check or symptom that does not exist.
/// </summary>
/// <example>Bad: <c>access: [isolated-opne]</c>. Good: <c>access: [isolated-open]</c>.</example>
internal sealed class UnknownId : IContentRule
{
    public string Name => "unknown-id";

    public string Meaning =>
        "A front matter that names a role, access state, series, fault, check or symptom that does not exist.";

    public RuleExample Bad { get; } = new("checks/fan-plug.md", """
        ---
        kind: check
        id: fan-plug
        minutes: 3
        access: [⟦isolated-opne⟧]
        who: technician
        ---
        """);

    public RuleExample Good { get; } = new("checks/fan-plug.md", """
        ---
        kind: check
        id: fan-plug
        minutes: 3
        access: [isolated-open]
        who: technician
        ---
        """);

    public ImmutableArray<ExamplePair> More { get; } =
    [
        new ExamplePair(
            new RuleExample("checks/fan-plug.md", """
            ---
            kind: check
            id: fan-plug
            minutes: 3
            access: [isolated-open]
            who: technician
            after: [⟦fan-plugg⟧]
            ---
            """),
            new RuleExample("checks/fan-plug.md", """
            ---
            kind: check
            id: fan-plug
            minutes: 3
            access: [isolated-open]
            who: technician
            ---
            """)),
    ];

    public IEnumerable<Diagnostic> Check(Pages pages) => Fields(pages).Concat(Pictures(pages));

    // Behind the target of a picture stands the series it is of.
    private IEnumerable<Diagnostic> Pictures(Pages pages) =>
        from page in pages.All
        from picture in page.Pictures
        where picture.Title.Length > 0 && !pages.Ids(PageKind.Series).Contains(picture.Title)
        select page.Error(Name, picture.TitleSpan, $"`{picture.Title}` is not the id of a series",
            NearestWord.HintOrListOfIds(picture.Title, pages.Ids(PageKind.Series)));

    private IEnumerable<Diagnostic> Fields(Pages pages)
    {
        foreach (Page page in pages.All.Where(page => page.Kind is not null))
        {
            foreach (FrontMatterField field in page.Front!.Fields)
            {
                if (PageShapes.Of(page.Kind!.Value).Field(field.Name)?.RefersTo is { } kind && pages.Knows(kind))
                {
                    foreach (FrontMatterValue value in field.Values
                        .Where(value => !pages.Ids(kind).Contains(value.Text)))
                    {
                        yield return page.Error(Name, value.Span, $"`{value.Text}` is not the id of {Words[kind]}",
                            NearestWord.HintOrListOfIds(value.Text, pages.Ids(kind)));
                    }
                }
            }
        }
    }

    private static readonly Dictionary<PageKind, string> Words = new()
    {
        [PageKind.Roles] = "a role", [PageKind.Access] = "an access state", [PageKind.Series] = "a series",
        [PageKind.Fault] = "a fault", [PageKind.Check] = "a check", [PageKind.Symptom] = "a symptom",
    };
}
