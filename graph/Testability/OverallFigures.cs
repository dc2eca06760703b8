using System.Collections.Immutable;

namespace DxAssistant.Graph.Testability;

/// <summary>The figures of all symptoms, each weighing as often as it is met.</summary>
/// <param name="IsolatableTo">As of <see cref="SymptomFigures.IsolatableTo"/>, to 1, 2, 3 repairs.</param>
/// <param name="SurelyIsolatableTo">As of <see cref="SymptomFigures.SurelyIsolatableTo"/>, to 1, 2, 3 repairs.</param>
public sealed record OverallFigures(
    double Detected, ImmutableArray<double> IsolatableTo, double MeanGroup,
    ImmutableArray<double> SurelyIsolatableTo, double MeanLookAlikes, WalkFigures? Walks,
    double? LeastMinutes, double? PricedMinutes, LaidFigures? Laid)
{
    internal static OverallFigures Of(ImmutableArray<SymptomFigures> symptoms)
    {
        double all = symptoms.Sum(symptom => symptom.Weight);
        ImmutableArray<SymptomFigures> walked = [.. symptoms.Where(symptom => symptom.Walks is not null)];
        double walkedWeight = walked.Sum(symptom => symptom.Weight);
        return new OverallFigures(
            Mean(symptoms, all, symptom => symptom.Detected) ?? 0,
            ToEach(symptoms, all, (symptom, repairs) => symptom.IsolatableTo(repairs)),
            Mean(symptoms, all, symptom => symptom.MeanGroup) ?? 0,
            ToEach(symptoms, all, (symptom, repairs) => symptom.SurelyIsolatableTo(repairs)),
            Mean(symptoms, all, symptom => symptom.MeanLookAlikes) ?? 0,
            walked.IsEmpty
                ? null
                : WalkFigures.Mixture([.. walked.Select(symptom => (symptom.Weight / walkedWeight, symptom.Walks!))]),
            Mean(walked, walkedWeight, symptom => symptom.LeastMinutes),
            Mean(walked, walkedWeight, symptom => symptom.PricedMinutes),
            walked.IsEmpty || walked.Any(symptom => symptom.Laid is null)
                ? null
                : LaidFigures.Mixture([.. walked.Select(symptom => (symptom.Weight / walkedWeight, symptom.Laid!))]));
    }

    private static ImmutableArray<double> ToEach(
        ImmutableArray<SymptomFigures> symptoms, double all, Func<SymptomFigures, int, double> share) =>
        [.. Enumerable.Range(1, WalkFigures.MostRepairs)
            .Select(repairs => Mean(symptoms, all, symptom => share(symptom, repairs)) ?? 0)];

    private static double? Mean(
        ImmutableArray<SymptomFigures> symptoms, double all, Func<SymptomFigures, double?> figure) =>
        symptoms.IsEmpty || symptoms.Any(symptom => figure(symptom) is null)
            ? null
            : symptoms.Sum(symptom => symptom.Weight / all * figure(symptom));
}
