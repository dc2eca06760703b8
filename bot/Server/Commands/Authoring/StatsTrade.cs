using System.Collections.Immutable;
using DxAssistant.Graph.Model;
using DxAssistant.Graph.Planning;
using DxAssistant.Graph.Testability;
using DxAssistant.Knowledge.Content;
using DxAssistant.Knowledge.Content.Model;
using DxAssistant.Knowledge.Pictures.Plans;
using DxAssistant.Knowledge.Walks;

namespace DxAssistant.Server.Commands.Authoring;

/// <summary>
/// Walks the same units with wrong parts at several prices, as conversations would: what minutes and parts trade for.
/// </summary>
/// <param name="walks">Units drawn for each symptom.</param>
/// <param name="work">The planner's work for a step.</param>
internal sealed class StatsTrade(Library library, Role role, int walks, ulong seed, int work)
{
    /// <summary>By which the price of a wrong part is multiplied.</summary>
    public static ImmutableArray<double> Factors { get; } = [0, 0.5, 1, 2, 4];

    private readonly ImmutableArray<Library> priced =
        [.. Factors.Select(factor => factor == 1 ? library : library
            with { Graph = library.Graph.WithWrongParts(factor) })];

    /// <summary>Told how many symptoms are done, and how many there are.</summary>
    public Action<int, int>? Progress { get; init; }

    /// <summary>A point for each factor, of all and of each symptom.</summary>
    public TradeFigures Of(ImmutableArray<SeriesStats> all)
    {
        ImmutableArray<(double Weight, SeriesPage Page, SymptomId Symptom)> walked =
            [.. all.SelectMany(series => Walked(series, all.Length))];
        List<(double Weight, SymptomId Symptom, ImmutableArray<PricePoint> Points)> played = [];
        foreach ((double weight, SeriesPage page, SymptomId symptom) in walked)
        {
            played.Add((weight, symptom, Points(page, symptom, seed + (ulong)played.Count)));
            Progress?.Invoke(played.Count, walked.Length);
        }

        return new TradeFigures(
            Mixed([.. played.Select(each => (each.Weight, each.Points))]),
            [.. played.GroupBy(each => each.Symptom).OrderBy(group => group.Key)
                .Select(group => (group.Key, Mixed([.. group.Select(each => (each.Weight, each.Points))])))]);
    }

    // As often as each symptom is met on its series; all series count alike.
    private IEnumerable<(double Weight, SeriesPage Page, SymptomId Symptom)> Walked(SeriesStats series, int count)
    {
        ImmutableArray<SymptomFigures> symptoms =
            [.. series.Report.Symptoms.Where(symptom => symptom.Walks is not null)];
        double sum = symptoms.Sum(symptom => symptom.Weight) * count;
        return symptoms.Select(symptom => (symptom.Weight / sum, library.Series[series.Series], symptom.Symptom));
    }

    private static ImmutableArray<PricePoint> Mixed(
        ImmutableArray<(double Weight, ImmutableArray<PricePoint> Points)> played)
    {
        double sum = played.Sum(each => each.Weight);
        return [.. Factors.Select((_, place) =>
            PricePoint.Mixture([.. played.Select(each => (each.Weight / sum, each.Points[place]))]))];
    }

    private ImmutableArray<PricePoint> Points(SeriesPage page, SymptomId symptom, ulong units)
    {
        var trade = new PriceTrade(Walking(library, page, symptom), walks, units);
        return [.. Factors.Select((factor, place) => trade.At(factor, Walking(priced[place], page, symptom)))];
    }

    private (SequencingProblem Problem, IPolicy Policy) Walking(Library at, SeriesPage page, SymptomId symptom) =>
        (PlanProblem.Of(at, page, symptom, role)!,
            new WalkPolicy(at, PlanProblem.SituationOf(at, page, symptom, role), symptom, work));
}
