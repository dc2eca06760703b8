using System.Collections.Immutable;
using DxAssistant.Knowledge.Content.Constructs;
using DxAssistant.Knowledge.Content.Syntax;

namespace DxAssistant.Knowledge.Content.Rules.Units;

/// <summary>A covered part that no fault and no repair has.</summary>
/// <example>Bad: <c>| electronics | room senser |</c>. Good: <c>| electronics | room sensor |</c>.</example>
internal sealed class UnknownPart : IContentRule
{
    public string Name => "unknown-part";

    public string Meaning => "A covered part that no fault and no repair has.";

    public bool LooksAtAll => true;

    public RuleExample Bad { get; } = new("coverage/alder-one.md", """
        ## Classes
        | Part class | Parts |
        |---|---|
        | electronics | ⟦room senser⟧ |
        """);

    public RuleExample Good { get; } = new("coverage/alder-one.md", """
        ## Classes
        | Part class | Parts |
        |---|---|
        | electronics | room sensor |
        """);

    public IEnumerable<Diagnostic> Check(Pages pages)
    {
        HashSet<string> known = [.. pages.OfKind(PageKind.Fault).Select(page => page.Front?.Field("part")?.Text)
            .Concat(pages.OfKind(PageKind.Repair)
                .SelectMany(page => page.Front?.Field("parts")?.Values.Select(value => value.Text) ?? []))
            .OfType<string>()];
        return from page in pages.OfKind(PageKind.Coverage)
            from row in page.Section("Classes")?.Table?.Rows ?? []
            let cell = row.Cell(1)
            where cell is not null
            let strange = PartList.Read(cell.Text).Where(part => !known.Contains(part)).ToArray()
            where strange.Length > 0
            select page.Error(Name, cell.Span, $"no fault or repair has the part `{strange[0]}`",
                NearestWord.HintOrList(strange[0], known));
    }
}
