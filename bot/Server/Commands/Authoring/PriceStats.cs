using System.Collections.Immutable;
using DxAssistant.Graph.Testability;

namespace DxAssistant.Server.Commands.Authoring;

/// <summary>Minutes and repairs in vain when a wrong part has another price.</summary>
/// <param name="Factor">Times the price that the pages give.</param>
/// <param name="BySeries">The overall figures of each series.</param>
internal sealed record PriceStats(double Factor, ImmutableArray<OverallFigures> BySeries)
{
    /// <summary>Mean over the series, minutes at the unit.</summary>
    public double Minutes => BySeries.Average(series => series.Walks?.Minutes.Value ?? 0);

    /// <summary>Mean over the series, repairs in vain a walk.</summary>
    public double InVain => BySeries.Average(series => series.Walks?.RepairsInVain.Value ?? 0);
}
