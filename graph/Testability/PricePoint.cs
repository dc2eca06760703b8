namespace DxAssistant.Graph.Testability;

/// <summary>How units are walked when a part changed for nothing has another price.</summary>
/// <param name="Factor">Times the price that the graph gives.</param>
/// <param name="Walks">Units walked.</param>
/// <param name="Minutes">At the unit.</param>
/// <param name="PartsInVain">Parts changed for nothing, a walk.</param>
/// <param name="MinutesMore">Minutes on the same units, more than at the graph's own price.</param>
/// <param name="PartsSaved">Parts changed for nothing on the same units, fewer than at the graph's own price.</param>
public sealed record PricePoint(double Factor, int Walks, Estimate Minutes, Estimate PartsInVain, Estimate MinutesMore,
    Estimate PartsSaved)
{
    /// <summary>The figures of walks that begin at several problems, priced alike.</summary>
    /// <param name="parts">At least one; the weights sum to 1.</param>
    public static PricePoint Mixture(IReadOnlyCollection<(double Weight, PricePoint Point)> parts)
    {
        Estimate Mixed(Func<PricePoint, Estimate> figure) =>
            Estimate.Mixture(parts.Select(part => (part.Weight, figure(part.Point))));
        return new PricePoint(
            parts.First().Point.Factor, parts.Sum(part => part.Point.Walks),
            Estimate.MixtureOfAmounts(parts.Select(part => (part.Weight, part.Point.Minutes))),
            Estimate.MixtureOfCounts(
                [.. parts.Select(part => (part.Weight, part.Point.PartsInVain, (double)part.Point.Walks))]),
            Mixed(point => point.MinutesMore), Mixed(point => point.PartsSaved));
    }
}
