using DxAssistant.Knowledge.Content.Constructs;
using DxAssistant.Knowledge.Content.Syntax;

namespace DxAssistant.Knowledge.Content.Rules;

/// <summary>A sign of danger that is not an outcome of the check.</summary>
/// <example>Bad: <c>stop: [lose]</c>. Good: <c>stop: [loose]</c>.</example>
internal sealed class UnknownStop : IContentRule
{
    private static readonly string[] Named = ["stop", "stop-gas"];

    public string Name => "unknown-stop";

    public bool NeedsFrame => true;

    public RuleExample Bad { get; } = new("checks/fan-plug.md", """
        ---
        kind: check
        id: fan-plug
        minutes: 3
        access: [isolated-open]
        who: technician
        stop: [⟦lose⟧]
        ---
        """);

    public RuleExample Good { get; } = new("checks/fan-plug.md", """
        ---
        kind: check
        id: fan-plug
        minutes: 3
        access: [isolated-open]
        who: technician
        stop: [loose]
        ---
        """);

    public IEnumerable<Diagnostic> Check(Pages pages)
    {
        foreach (Page page in pages.OfKind(PageKind.Check))
        {
            if (OutcomeTable.Of(page) is not { } outcomes)
            {
                continue;
            }

            string[] known = [.. outcomes.Rows.Select(row => row.Id.Text)];
            IEnumerable<FrontMatterValue> written = Named.Select(page.Front!.Field).OfType<FrontMatterField>().SelectMany(field => field.Values);
            foreach (FrontMatterValue value in written.Where(value => !known.Contains(value.Text)))
            {
                yield return page.Error(Name, value.Span, $"`{value.Text}` is not an outcome of this check",
                    NearestWord.HintOrList(value.Text, known));
            }
        }
    }
}
