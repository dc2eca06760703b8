using System.Globalization;
using DxAssistant.Knowledge.Content.Constructs;
using DxAssistant.Knowledge.Content.Rules.Frame;
using DxAssistant.Knowledge.Content.Syntax;

namespace DxAssistant.Knowledge.Content.Rules.Numbers;

/// <summary>A likelihood or frequency that is neither a known word nor a number.</summary>
/// <example>Bad: <c>| [Motor](…) | offen |</c>. Good: <c>| [Motor](…) | often |</c>.</example>
internal sealed class UnknownWord : IContentRule
{
    public string Name => "unknown-word";

    public string Meaning => "A likelihood or frequency that is neither a known word nor a number.";

    public RuleExample Bad { get; } = new("symptoms/fan-not-turning.md", """
        ## Causes
        | Fault | How often |
        |---|---|
        | [Motor](../faults/fan-motor-failed.md) | ⟦offen⟧ |
        | [Plug](../faults/fan-plug-loose.md) | often |
        | [None of these](../faults/none-of-these.md) | seldom |
        """);

    public RuleExample Good { get; } = new("symptoms/fan-not-turning.md", """
        ## Causes
        | Fault | How often |
        |---|---|
        | [Motor](../faults/fan-motor-failed.md) | often |
        | [Plug](../faults/fan-plug-loose.md) | often |
        | [None of these](../faults/none-of-these.md) | seldom |
        """);

    // Without their tables all words are unknown, which MissingHeading or MissingPage reports once.
    public IEnumerable<Diagnostic> Check(Pages pages) =>
        (pages.Frequencies.IsEmpty ? [] : CheckFrequencies(pages))
            .Concat(pages.Likelihoods.IsEmpty ? [] : CheckCells(pages));

    private IEnumerable<Diagnostic> CheckFrequencies(Pages pages) =>
        from page in pages.OfKind(PageKind.Fault)
        let field = page.Front!.Field("frequency")
        let word = field?.Text
        where word is not null && Number.Read(word) is not > 0 && !pages.Frequencies.ContainsKey(word)
        select page.Error(Name, field.Span, $"`{word}` is not a frequency",
            NearestWord.HintOrList(word, pages.Frequencies.Keys));

    private IEnumerable<Diagnostic> CheckCells(Pages pages) =>
        from page in pages.All
        where page.Kind is PageKind.Check or PageKind.Symptom
        from cell in Cells(page)
        where !cell.IsEmpty && pages.Likelihood(cell.Text) is null
        select page.Error(Name, cell.Span, $"`{cell.Text}` is not a likelihood", Help(pages, cell.Text));

    private static IEnumerable<RichText> Cells(Page page) =>
        page.Section(page.Kind == PageKind.Check ? "Likelihoods" : "Causes")?.Table is { } table
            ? table.Rows.SelectMany(row => row.Cells.Skip(1))
            : [];

    private static Remedy Help(Pages pages, string text) => Number.Read(text) is not null
        ? "a number must be above 0 and below 1"
        : text.EndsWith('%') && Number.Read(text[..^1].Trim()) is > 0 and < 100 and double percent
        ? string.Create(CultureInfo.InvariantCulture, $"write `{percent / 100:0.####}`")
        : NearestWord.HintOrList(text, pages.Likelihoods.Keys);
}
