using System.Globalization;
using System.Text;
using DxAssistant.Knowledge.Content;
using DxAssistant.Knowledge.Content.Model;

namespace DxAssistant.Knowledge.Tests.Content;

/// <summary>The page that says how the shipped questions read and which sources the pages cite.</summary>
internal static class LibraryFigures
{
    public static string Page(Library library, ContentFolder folder)
    {
        var page = new StringBuilder();
        page.Append(
            "# The shipped library in figures\n\nMade from the pages by `DX_UPDATE=1 dotnet test tests/Knowledge.Tests "
                + "--filter LibraryFigures`. What was read and checked by hand, and numbers drawn by lot, stand in the "
                + "[review](REVIEW.md).\n\n");
        Reading(page, library);
        Sources(page, library, folder);
        return page.ToString();
    }

    private static void Reading(StringBuilder page, Library library)
    {
        page.Append("""
            ## How the questions read
            Syllables are counted by groups of vowels. The grade is that of Kincaid and others, 1975: school years after which a text is read with ease.
            One question stands for one sentence. Where a question needs the name of a part, the grade rises with the name.

            | Of | Sentences | Words, mean | Words, most | Syllables a word | Grade |
            |---|---|---|---|---|---|

            """);
        foreach (string role in library.Roles.Select(known => known.Role.Id))
            Row(page, $"questions to: {role}", Asked(library, role));
        Row(page, "what a repair is verified by", [.. library.Repairs.Values.Select(repair => repair.Verify.Text)]);
        Row(page, "steps of checks", [.. library.Checks.Values.SelectMany(check => check.How).SelectMany(Cut)]);
        Row(page, "steps of repairs", [.. library.Repairs.Values.SelectMany(repair => repair.Steps).SelectMany(Cut)]);
        Row(page, "cautions",
            [.. library.Cautions.Values.SelectMany(caution => caution.Do.Append(caution.Danger)).SelectMany(Cut)]);
    }

    private static string[] Asked(Library library, string role) =>
        [.. library.Graph.Checks.Where(check => check.Who.Id == role)
            .Select(check => library.Checks[check.Id].Ask.Text)];

    private static string[]
        Cut(Passage passage) => passage.Text.Split([". ", "? ", "! ", ": "], StringSplitOptions.RemoveEmptyEntries);

    private static void Row(StringBuilder page, string name, IReadOnlyCollection<string> sentences)
    {
        ReadingLevel level = ReadingLevel.Of(sentences);
        page.Append(CultureInfo.InvariantCulture,
            $"| {name} | {level.Sentences} | {level.Words:0.0} | {level.Longest} | {level.SyllablesAWord:0.00} | {level.Grade:0.0} |\n");
    }

    private static void Sources(StringBuilder page, Library library, ContentFolder folder)
    {
        page.Append(
            "\n## Sources\nWhat each says, its edition and what is from memory stands on the [page of sources](../../content/sources.md). "
            + "Those that no page cites belong to [calculations](../CALCULATIONS.md).\n\n"
            + "| Source | Pages that cite it |\n|---|---|\n");
        foreach (Source source in library.Sources.Values.OrderBy(source => source.Title.Text, StringComparer.Ordinal))
            page.Append(CultureInfo.InvariantCulture,
                $"| {source.Title.Text} | {folder.Files.Count(file => Cites(file, source))} |\n");
    }

    private static bool Cites(ContentFile file, Source source) =>
        file.Text.Contains($"sources.md#{source.Id})", StringComparison.Ordinal);
}
