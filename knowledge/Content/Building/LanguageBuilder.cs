using System.Collections.Immutable;
using DxAssistant.Knowledge.Content.Constructs;
using DxAssistant.Knowledge.Content.Model;
using DxAssistant.Knowledge.Content.Syntax;

namespace DxAssistant.Knowledge.Content.Building;

/// <summary>Makes language pages. Lists may give several wordings an item, parted by commas.</summary>
internal static class LanguageBuilder
{
    public static LanguagePage Build(Page page) => new(
        page.Id,
        new Passage(page.Title!.Heading.Text, new PagePlace(page.Path, page.Title.Name)),
        page.Front!.Field("main")?.Text == "true",
        page.Front.Field("analyzer")?.Text,
        page.Front.Field("decimal")?.Text == "comma",
        Words(page, "Small words").ToImmutableSortedSet(StringComparer.Ordinal),
        Words(page, "Chosen by"),
        Words(page, "Not"),
        Words(page, "All is well"),
        Answer(page),
        Rows(page, "Numbers").Where(pair => Number.Read(pair.Means) is not null).DistinctBy(pair => pair.Words)
            .ToImmutableSortedDictionary(pair => pair.Words, pair => Number.Read(pair.Means)!.Value,
                StringComparer.Ordinal),
        Rows(page, "Readings"),
        Rows(page, "Figures"));

    private static Passage? Answer(Page page) => page.Section("Answer") is { } section
        ? new Passage(string.Join(' ', section.Paragraphs.Select(text => text.Text)),
            new PagePlace(page.Path, section.Name))
        : null;

    private static ImmutableArray<string> Words(Page page, string heading) =>
    [
        .. (page.Section(heading)?.Items ?? []).SelectMany(item =>
            item.Text.Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries)),
    ];

    private static ImmutableArray<WordPair> Rows(Page page, string heading) =>
    [
        .. (page.Section(heading)?.Table?.Rows ?? []).SelectMany(row => row.Cells[0].Text
            .Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries)
            .Select(words => new WordPair(words, row.Cells[1].Text))),
    ];
}
