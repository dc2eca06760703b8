using DxAssistant.Graph.Model;
using DxAssistant.Knowledge.Content;
using DxAssistant.Knowledge.Content.Model;
using DxAssistant.Knowledge.Pictures.Plans;

namespace DxAssistant.Server.Workbench.Drawing;

/// <summary>Pictures of a library by the names that commands and pages use.</summary>
internal static class LibraryPictures
{
    /// <summary>The planned walk of a symptom, on one page.</summary>
    public const string Walk = "walk";

    /// <summary>A symptom with its faults, checks and repairs.</summary>
    public const string Symptom = "symptom";

    /// <summary>All faults against all series and symptoms.</summary>
    public const string Coverage = "coverage";

    /// <summary>Most checks that a walk can be limited to.</summary>
    public const int MostChecks = 40;

    private static readonly DagreLayout Layout = new();

    /// <param name="work">The planner's work for a step of a walk.</param>
    /// <exception cref="ArgumentException">Something named is not there.</exception>
    public static Planned Of(Library main, PictureAsked asked, int work = WalkPage.UsualWork)
    {
        Library library = In(main, asked.Language);
        var words = new PageWords(library);
        if (asked.Checks is < 0 or > MostChecks)
            throw new ArgumentException($"a walk can be limited to 0 to {MostChecks} checks, not {asked.Checks}");
        if (asked.Kind == Coverage)
            return CoverageMap.Draw(library, string.IsNullOrEmpty(asked.Series)
                ? null
                : SeriesOf(library, asked.Series), words);
        if (asked.Kind is not (Walk or Symptom))
            throw new ArgumentException($"there is no picture {asked.Kind}: name walk, symptom or coverage");
        SeriesPage series = SeriesOf(library, asked.Series);
        SymptomPage symptom = SymptomOf(library, asked.Symptom);
        Planned? drawn = asked.Kind == Walk
            ? WalkPage.Draw(library, series, symptom, words, asked.Checks, work)
            : SymptomGraph.Draw(library, series, symptom, words, Layout);
        return drawn ?? throw new ArgumentException($"no fault of {asked.Series} shows {asked.Symptom}");
    }

    private static Library In(Library main, string? language) =>
        string.IsNullOrEmpty(language) || language == main.Language?.Id ? main
        : main.Translations.TryGetValue(language, out Library? library) ? library
        : throw new ArgumentException(
            $"the pages are not in the language {language}: {string.Join(", ", main.Translations.Keys)}");

    private static SeriesPage SeriesOf(Library library, string? id) =>
        library.Series.TryGetValue(id ?? "", out SeriesPage? series) ? series
        : throw new ArgumentException($"there is no series {id}: name one of {string.Join(", ", library.Series.Keys)}");

    private static SymptomPage SymptomOf(Library library, string? id) =>
        !string.IsNullOrEmpty(id) && library.Symptoms.TryGetValue(new SymptomId(id), out SymptomPage? symptom) ? symptom
        : throw new ArgumentException(
            $"there is no symptom {id}: name one of {string.Join(", ", library.Symptoms.Keys)}");
}
