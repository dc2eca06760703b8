using DxAssistant.Knowledge.Content.Shapes;
using DxAssistant.Knowledge.Content.Syntax;

namespace DxAssistant.Knowledge.Content.Rules.Frame;

/// <summary>A page whose file is not named and placed after its id and kind.</summary>
/// <example>Bad: <c>id: mains in live-mains.md</c>. Good: <c>id: live-mains in live-mains.md</c>.</example>
internal sealed class WrongPlace : IContentRule
{
    public string Name => "wrong-place";

    public string Meaning => "A page whose file is not named and placed after its id and kind.";

    public RuleExample Bad { get; } = new("cautions/live-mains.md", """
        ---
        kind: caution
        id: ⟦mains⟧
        ---
        """);

    public RuleExample Good { get; } = new("cautions/live-mains.md", """
        ---
        kind: caution
        id: live-mains
        ---
        """);

    public IEnumerable<Diagnostic> Check(Pages pages)
    {
        foreach (Page page in pages.All)
        {
            if (page is not { Kind: { } kind, Front: { } front } || front.Field("id") is not { Text: { } id } field)
            {
                continue;
            }

            if (pages.WithId(kind, id) != page)
            {
                continue;
            }

            string name = PageShapes.Of(kind).PathOf(page.FileId);
            if (!Constructs.Id.IsId(id))
            {
                yield return page.Error(Name, field.Span, $"`{id}` is not an id",
                    OddCharacter.Said(Constructs.Id.Help, id));
            }
            else if (id != page.FileId)
            {
                yield return page.Error(Name, field.Span, $"the id `{id}` is not the file name `{page.FileId}`",
                    OddCharacter.In(page.FileId) is { } odd ? $"name the file anew: {odd}" : null);
            }
            else if (page.Path != name)
            {
                yield return page.Error(Name, front.Field("kind")!.Span,
                    $"a {PageShapes.Of(kind).Word} page does not belong here",
                    $"its place is `{name}`");
            }
        }
    }
}
