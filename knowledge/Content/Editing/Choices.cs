using System.Collections.Immutable;
using DxAssistant.Knowledge.Content.Constructs;
using DxAssistant.Knowledge.Content.Shapes;
using DxAssistant.Knowledge.Content.Syntax;
using DxAssistant.Knowledge.Judging;
using DxAssistant.Knowledge.Quantities;

namespace DxAssistant.Knowledge.Content.Editing;

/// <summary>Says what can be written at a place: ids, links, units, calculations, likelihood words, headings.</summary>
internal sealed class Choices(Pages pages)
{
    public ImmutableArray<EditorChoice> At(Spot spot, int line, int character)
    {
        string text = spot.Page.Source.Text.Split('\n')[line];
        string before = text[..Math.Min(character, text.Length)];
        int start = StartOfWord(before);
        int end = character;
        while (end < text.Length && !Ends(text[end])) end++;
        var range = new EditorRange(line, start, line, end);
        return [.. Words(spot, before, line).Select(word => new EditorChoice(word.Text, word.About, range))];
    }

    private IEnumerable<(string Text, string About)> Words(Spot spot, string before, int line)
    {
        if (before.LastIndexOf("](", StringComparison.Ordinal) is >= 0 and int open && !before[open..].Contains(')'))
            return Links(spot.Page);
        if (before.StartsWith("## ", StringComparison.Ordinal)) return Headings(spot);
        if (IsInFront(spot.Page, line)) return InFront(spot, before);
        return before.TrimStart().StartsWith('|') ? InTable(spot, before) : [];
    }

    private static bool IsInFront(Page page, int line) =>
        page.Source.Text.StartsWith("---\n", StringComparison.Ordinal)
        && line < page.Source.Text[..Math.Max(0, page.Source.Text.IndexOf("\n---", 3, StringComparison.Ordinal)
            + 1)].Count(c => c == '\n');

    private IEnumerable<(string Text, string About)> Links(Page from) => pages.All.Where(page => page != from)
        .Select(page => (PageLink.Between(from.Path, page.Path), page.Title?.Name ?? ""))
        .OrderBy(link => link.Item1, StringComparer.Ordinal);

    private static IEnumerable<(string Text, string About)> Headings(Spot spot) =>
        (spot.Shape?.Sections ?? []).Where(section => spot.Page.Section(section.Heading) is null)
            .Select(section => (section.Heading, section.Required ? "needed" : ""));

    private IEnumerable<(string Text, string About)> InFront(Spot spot, string before)
    {
        int colon = before.IndexOf(':', StringComparison.Ordinal);
        if (colon < 0)
            return (spot.Shape?.Fields ?? []).Where(field => spot.Page.Front?.Field(field.Name) is null)
                .Select(field => (field.Name + ": ", ""));
        string name = before[..colon].Trim();
        if (name == "kind") return PageShapes.KindWords.Select(word => (word, ""));
        if (name == "calculation")
            return Judges.All.Select(
                judge => (judge.Name, string.Join(", ", judge.Readings.Select(reading => reading.Name))));
        if (name == "frequency") return pages.Frequencies.Select(pair => (pair.Key, $"{pair.Value}"));
        if (name is "stop" or "stop-gas" or "stop-wet" or "stop-shock" or "leave-off")
            return OutcomeTable.Of(spot.Page)?.Rows.Select(row => (row.Id.Text, row.Answer.Text)) ?? [];
        FieldShape? field = spot.Shape?.Field(name);
        if (field?.RefersTo is { } kind) return pages.Ids(kind).Order(StringComparer.Ordinal)
            .Select(id => (id, pages.WithId(kind, id)?.Title?.Name ?? ""));
        if (field?.Type == FieldType.YesNo) return [("true", ""), ("false", "")];
        return field is { Choices.IsDefault: false } ? field.Choices.Select(choice => (choice, "")) : [];
    }

    // A row that is being written need not be one yet: the section is found by its heading, the cell by its bars.
    private IEnumerable<(string Text, string About)> InTable(Spot spot, string before)
    {
        int cell = before.Count(c => c == '|') - 1;
        IJudge? judge = Judges.Find(spot.Page.Front?.Field("calculation")?.Text);
        return (spot.Page.Kind, spot.Section?.Name, spot.Section?.Table?.Head.Cell(cell)?.Text) switch
        {
            (PageKind.Check, "Likelihoods", _) when cell == 0 => [(LikelihoodTable.EveryOtherFault, "")],
            (PageKind.Check, "Likelihoods", _) or (PageKind.Symptom, "Causes", "How often") =>
                pages.Likelihoods.Select(pair => (pair.Key, $"{pair.Value}")),
            (PageKind.Check, "Readings", "Unit") => Units(judge, spot),
            (PageKind.Check, "Expected", "Input") when judge is not null =>
                judge.Inputs.Select(input => (input.Name, input.Meaning)),
            (PageKind.Check, "Outcomes", "Verdict") when judge is not null =>
                judge.Verdicts.Select(verdict => (VerdictWords.Of(verdict), "")),
            _ => [],
        };
    }

    private static IEnumerable<(string Text, string About)> Units(IJudge? judge, Spot spot)
    {
        int row = spot.Row is null ? 0 : spot.Section!.Table!.Rows.IndexOf(spot.Row);
        QuantityKind? kind = judge?.Readings.ElementAtOrDefault(row)?.Kind;
        return Unit.All.Where(unit => kind is null || unit.Kind == kind)
            .Select(unit => (unit.Symbol, KindWords.Of(unit.Kind))).Distinct();
    }

    private static int StartOfWord(string before)
    {
        int start = before.Length;
        while (start > 0 && !Ends(before[start - 1])) start--;
        return start;
    }

    private static bool Ends(char c) => char.IsWhiteSpace(c) || c is '|' or '[' or ']' or '(' or ')' or ',' or ':';
}
