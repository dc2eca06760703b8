using System.Globalization;
using DxAssistant.Knowledge.Content;
using DxAssistant.Knowledge.Content.Model;
using DxAssistant.Knowledge.Judging;
using DxAssistant.Knowledge.Pictures;
using DxAssistant.Knowledge.Quantities;
using DxAssistant.Knowledge.Readings;
using DxAssistant.Knowledge.Tests.Content;

namespace DxAssistant.Knowledge.Tests.Pictures;

public sealed class VerdictPictureTests
{
    private const int Draws = 25;

    public static TheoryData<string> Names => [.. PictureCases.All.Select(known => known.Name)];

    [Theory]
    [MemberData(nameof(Names))]
    public void Of_KnownVerdict_IsTheKeptPicture(string name) =>
        GoldenPicture.Compare(name, PictureCases.Draw(name)!.Svg);

    [Theory]
    [MemberData(nameof(Names))]
    public void Of_KnownVerdict_KeepsTheRulesAndCoversNoText(string name) =>
        DrawingRules.NothingCovered(DrawingRules.Hold(PictureCases.Draw(name)!));

    [Fact]
    public void Of_EveryJudge_HasAPicture() => Assert.Equal(
        JudgeCatalogue.All.Keys, PictureCases.All.Select(known => known.Judge).Distinct()
            .Order(StringComparer.Ordinal));

    [Fact]
    public void Of_ReadingThatCannotBe_IsNotDrawn() => Assert.Null(PictureCases.Draw(
        "supply-limits", "nominal = 230 V; below = 10 %; above = 10 %; meter = 1 % + 2 × 0.1 V", "-40 V"));

    [Fact]
    public void Of_SameVerdictInAnotherCulture_IsTheSameBytes()
    {
        string before = PictureCases.Draw("superheat-high")!.Svg;
        CultureInfo culture = CultureInfo.CurrentCulture;
        try
        {
            var comma = (CultureInfo)CultureInfo.InvariantCulture.Clone();
            comma.NumberFormat.NumberDecimalSeparator = ",";
            comma.NumberFormat.NegativeSign = "~";
            CultureInfo.CurrentCulture = comma;
            Assert.Equal(before, PictureCases.Draw("superheat-high")!.Svg);
        }
        finally
        {
            CultureInfo.CurrentCulture = culture;
        }
    }

    // The words in the picture are those of the sentence beside it: same figures, same digits.
    [Theory]
    [InlineData("sensor-low", "On the sensor curve, 2.1 kΩ at 24 °C lies below the expected 9.63 kΩ to 11.2 kΩ.")]
    [InlineData("windings-unequal",
        "Bars of U–V 0.98 Ω, V–W 1.1 Ω, U–W 0.99 Ω. Expected: 0.972 Ω to 1.07 Ω. The odd one is V–W.")]
    [InlineData("supply-low", "On a scale, voltage 198 V lies below the expected 207 V to 253 V.")]
    [InlineData("continuity-open", "On a scale, resistance OL lies far above the expected ≤ 2 Ω.")]
    public void Text_OfKnownVerdict_SaysWhatIsDrawn(string name, string text) =>
        Assert.Equal(text, PictureCases.Draw(name)!.Text);

    // Every check of the shipped pages on every series, with readings anywhere in what is possible.
    [Fact]
    public void Of_ShippedChecksWithAnyReadings_StayOnThePaper()
    {
        int seed = Environment.TickCount;
        var random = new Random(seed);
        Library library = ContentCompiler.Compile(RepositoryFolder.Read("content")).Library!;
        int drawn = 0;
        foreach ((CheckPage check, SeriesPage series) in Calculated(library))
        {
            for (int i = 0; i < Draws; i++)
            {
                JudgeRequest request = Request(library, check, series, random);
                var facts = new VerdictFacts(check.Calculation!, check.Title.Text, request,
                    JudgeCatalogue.All[check.Calculation!].Judge(request));
                if (VerdictPictures.Of(facts, PictureCases.Words) is not { } picture) continue;
                try
                {
                    DrawingRules.Hold(picture);
                    Assert.Equal(picture, VerdictPictures.Of(facts, PictureCases.Words));
                }
                catch (Exception error)
                {
                    throw new InvalidOperationException(
                        $"seed {seed}: {check.Id} on {series.Id}: {string.Join(", ", request.Readings)}", error);
                }

                drawn++;
            }
        }

        Assert.True(drawn > 500, $"seed {seed}: only {drawn} pictures");
    }

    private static IEnumerable<(CheckPage Check, SeriesPage Series)> Calculated(Library library) =>
        from check in library.Checks.Values
        where check.Calculation is not null
        from series in library.Series.Values
        where check.Series.IsEmpty || check.Series.Contains(series.Id)
        select (check, series);

    private static JudgeRequest Request(Library library, CheckPage check, SeriesPage series, Random random) => new(
        [.. check.Readings.Select(field => Reading(field, random))], library.JudgeInputsFor(check, series));

    private static Reading Reading(ReadingField field, Random random)
    {
        double share = random.NextDouble();
        double value = field.Lowest + (field.Highest - field.Lowest) * share * share * share;
        return random.Next(12) == 0 && field.Unit.Kind == QuantityKind.Resistance
            ? new Reading(field.Label, random.Next(2) == 0 ? ReadingState.OpenCircuit : ReadingState.ShortCircuit, 0,
                field.Unit, "")
            : new Reading(field.Label, ReadingState.Number, value, field.Unit, "");
    }
}
