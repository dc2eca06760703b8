using System.Collections.Immutable;
using DxAssistant.Knowledge.Content.Syntax;

namespace DxAssistant.Knowledge.Content.Languages;

/// <summary>
/// A page with the words of another language put in: its links, numbers and ids stay those of the page.
/// </summary>
internal static class MergedPage
{
    private static readonly ImmutableArray<string> SaidFields = ["part", "parts"];

    public static Page Of(Page main, Page other) => new()
    {
        Source = main.Source,
        Kind = main.Kind,
        Front = main.Front! with { Fields = [.. main.Front.Fields.Select(field => FieldOf(field, other))] },
        Title = other.Title is { } title ? title with { Path = other.Path } : main.Title,
        Summary = other.Summary ?? main.Summary,
        SummarySection = other.Summary is null ? main.Title : other.Title! with { Path = other.Path },
        Sections = main.Kind == PageKind.Glossary
            ? [.. other.Sections.Select(section => section with { Path = other.Path })]
            : [.. main.Sections.Select(section => SectionOf(main.Kind!.Value, section, other))],
        WrittenSections = main.WrittenSections,
        Links = main.Links,
        Pictures = main.Pictures,
    };

    private static FrontMatterField FieldOf(FrontMatterField field, Page other) =>
        SaidFields.Contains(field.Name) && other.Front?.Field(field.Name) is { } said ? said : field;

    private static Section SectionOf(PageKind kind, Section section, Page other)
    {
        TranslatedPart? part = TranslatedParts.IsFree(kind)
            ? TranslatedPart.Words(section.Name)
            : TranslatedParts.Of(kind)?.FirstOrDefault(part => part.Heading == section.Name);
        return part is null || other.Section(section.Name) is not { } said ? section : section with
        {
            Path = other.Path,
            Paragraphs = [.. said.Paragraphs.Select((text, at) => at == 0 ? text
                with { Links = [.. section.Paragraphs.SelectMany(main => main.Links)] } : text)],
            Items = part.Counted ? [.. section.Items.Zip(said.Items, TextOf)] : said.Items,
            Tables = section.Table is { } table && said.Table is { } words
                ? [TableOf(part, table, words)]
                : section.Tables,
        };
    }

    // The words of one, the links of the other.
    private static RichText TextOf(RichText main, RichText said) => main with { Text = said.Text, Span = said.Span };

    private static PipeTable TableOf(TranslatedPart part, PipeTable main, PipeTable said) => main with
    {
        Rows = [.. main.Rows.Zip(said.Rows, (row, words) => RowOf(part, main, said, row, words))],
    };

    private static TableRow RowOf(TranslatedPart part, PipeTable main, PipeTable said, TableRow row, TableRow words)
    {
        ImmutableArray<RichText> cells = row.Cells;
        for (int i = 0; i < words.Cells.Length; i++)
        {
            string head = said.Head.Cells[i].Text;
            int column = main.Column(part.ColumnFor(head));
            if (column >= 0 && (head == TranslatedPart.ShownAs || part.Texts.Contains(head)))
            {
                cells = cells.SetItem(column, TextOf(cells[column], words.Cells[i]));
            }
        }

        return row with { Cells = cells };
    }
}
