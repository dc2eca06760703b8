using System.Collections.Immutable;
using DxAssistant.Knowledge.Content.Constructs;
using DxAssistant.Knowledge.Content.Model;
using DxAssistant.Knowledge.Judging;
using DxAssistant.Knowledge.Quantities;

namespace DxAssistant.Knowledge.Content.Building;

/// <summary>Takes the inputs of a check's calculation from its page and from the series of the case.</summary>
internal static class JudgeInputs
{
    public static ImmutableSortedDictionary<string, JudgeInput> For(CheckPage check, SeriesPage series, Library library)
    {
        if (Judges.Find(check.Calculation) is not { } judge)
        {
            throw new ArgumentException($"the check {check.Id} calculates nothing", nameof(check));
        }

        if (!check.Series.IsEmpty && !check.Series.Contains(series.Id))
        {
            throw new ArgumentException($"the check {check.Id} is not for the series {series.Id}", nameof(series));
        }

        QuantityKind? kind = judge.Readings[0].Kind ?? check.Readings[0].Unit.Kind;
        return check.Expected.Values.ToImmutableSortedDictionary(
            input => input.Name,
            input => Read(judge.Inputs.First(need => need.Name == input.Name), kind, input, series, library),
            StringComparer.Ordinal);
    }

    // The rules have read every value with the same reader, for every series the check is for.
    private static JudgeInput Read(InputNeed need, QuantityKind? kind, ExpectedInput input, SeriesPage series,
        Library library)
    {
        Rating? rating = input.Rating is null ? null : series.Ratings[input.Rating];
        string? curve = rating is null ? input.Curve : rating.Curve;
        string text = (rating?.Value ?? input.Value).Text;
        var linked = new Linked(
            curve is null ? null : library.Curves[curve].Curve,
            rating is null && input.Meter is { } meter ? library.Meters[meter].Meter : null);
        return InputReader.Read(need, kind, text, linked)!;
    }
}
