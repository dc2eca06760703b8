using DxAssistant.Knowledge.Content;
using DxAssistant.Knowledge.Content.Model;
using DxAssistant.Knowledge.Judging;
using DxAssistant.Knowledge.Quantities;
using DxAssistant.Knowledge.Readings;

namespace DxAssistant.Knowledge.Tests.Content;

public class ShippedContentTests
{
    private static readonly ContentFolder Folder = RepositoryFolder.Read("content");
    private static readonly CompileResult Result = ContentCompiler.Compile(Folder);

    [Fact]
    public void Compile_ShippedContent_FindsNoError() => Assert.True(Result.IsClean,
        string.Concat(Result.Diagnostics.Where(found => found.Severity == Severity.Error).Take(20)
            .Select(found => DiagnosticText.Render(found, Folder, "content/"))));

    [Fact]
    public void Compile_ShippedContent_GraphHasNoFindings() => Assert.Empty(Result.Library!.Graph.Findings);

    [Fact]
    public void Rebuild_ShippedContent_ReadsOtherLanguagesOnlyWhenTheyAreAskedFor()
    {
        ContentFile broken = new("faults/drain-blocked.es.md", "# no page at all");
        Library late = ContentCompiler.Rebuild(Folder.With(broken)), whole = ContentCompiler.Rebuild(Folder);

        Assert.Equal(Result.Library!.Version, whole.Version);
        Assert.Equal(Titles(Result.Library), Titles(whole));
        Assert.Equal(Titles(Result.Library.Translations["es"]), Titles(whole.Translations["es"]));
        Assert.Same(whole.Translations["es"], whole.Translations["es"]);
        Assert.Equal(Titles(whole), Titles(late));
        Assert.NotEqual(Titles(whole.Translations["es"]), Titles(late.Translations["es"]));
    }

    private static IEnumerable<string> Titles(Library library) =>
        library.Faults.Values.Select(fault => fault.Title.Text)
        .Concat(library.Checks.Values.Select(check => check.Ask.Text))
        .Concat(library.Symptoms.Values.Select(symptom => symptom.Title.Text));

    [Fact]
    public void JudgeInputsFor_EveryShippedCheckAndSeries_FitTheCalculation()
    {
        int count = 0;
        foreach (CheckPage check in Result.Library!.Checks.Values.Where(check => check.Calculation is not null))
        {
            foreach (SeriesPage series in Result.Library.Series.Values
                .Where(series => check.Series.IsEmpty || check.Series.Contains(series.Id)))
            {
                var inputs = Result.Library.JudgeInputsFor(check, series);
                Assert.Null(JudgeCatalogue.All[check.Calculation!].ProblemWith(inputs));
                count++;
            }
        }

        Assert.True(count > 20, $"only {count} checks calculate");
    }

    [Fact]
    public void Parse_NumberInTheUnitOfEveryReadingOfThePages_IsRead()
    {
        foreach (CheckPage check in Result.Library!.Checks.Values)
            foreach (ReadingField field in check.Readings)
            {
                string typed = new Quantity(Middle(field), field.Unit).ToString();
                ReadingContext form = ReadingContext.ForForm(
                    [new AskedField(field.Label, field.Unit, new PossibleRange(field.Lowest, field.Highest))]);
                var result = ReadingParser.Parse(typed, form);
                Assert.True(result is ReadingResult.Readings { List: [{ State: ReadingState.Number }], Unclear: null },
                    $"{check.Id}: {typed} is not read as a number");
            }
    }

    private static double Middle(ReadingField field) =>
        Math.Round(field.Unit.FromSi((field.Lowest + field.Highest) / 2), 1);
}
