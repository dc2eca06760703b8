using DxAssistant.Knowledge.Content.Syntax;

namespace DxAssistant.Knowledge.Content.Editing;

/// <summary>Finds where links, ids and words are defined.</summary>
internal sealed class Definitions(Pages pages)
{
    public EditorPlace? Of(Spot spot)
    {
        if (spot.Link is { } link) return pages.Target(spot.Page, link) is { } target ? At(target, link.Anchor) : null;
        if (spot.Value is { } value && spot.Shape?.Field(spot.Field!.Name)?.RefersTo is { } kind)
            return kind == PageKind.Roles ? Row(PageKind.Roles, "Roles", value.Text)
                : pages.WithId(kind, value.Text) is { } page ? At(page, null) : null;
        if (spot.Value is { } word && spot.Field!.Name == "frequency")
            return Row(PageKind.Words, "Frequencies", word.Text);
        return spot.Cell > 0 && spot.Section?.Name is "Likelihoods" or "Causes" && spot.CellText is { } cell
            ? Row(PageKind.Words, "Likelihoods", cell.Text)
            : null;
    }

    /// <summary>The page that is named at a place, or null.</summary>
    public Page? PageNamed(Spot spot)
    {
        if (spot.Link is { } link) return pages.Target(spot.Page, link);
        if (spot.Value is null) return null;
        if (spot.Field!.Name == "id") return pages.AtPath(Languages.LanguageOfPath.MainOf(spot.Page.Path));
        return spot.Shape?.Field(spot.Field.Name)?.RefersTo is { } kind && kind != PageKind.Roles
            ? pages.WithId(kind, spot.Value.Text)
            : null;
    }

    private static EditorPlace At(Page page, string? anchor)
    {
        Section? heading = anchor is null ? page.Title
            : page.Sections.Prepend(page.Title).OfType<Section>()
                .FirstOrDefault(section => Slug.Of(section.Name) == anchor);
        return new EditorPlace(page.Path, EditorRange.Of(page.Source.Text, heading?.Heading.Span ?? page.IdSpan));
    }

    private EditorPlace? Row(PageKind kind, string section, string word) =>
        pages.Single(kind) is { } page
        && page.Section(section)?.Table?.Rows.FirstOrDefault(row => row.Cell(0)?.Text == word)?.Cells[0] is { } cell
            ? new EditorPlace(page.Path, EditorRange.Of(page.Source.Text, cell.Span))
            : null;
}
