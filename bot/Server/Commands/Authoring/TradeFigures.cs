using System.Collections.Immutable;
using DxAssistant.Graph.Model;
using DxAssistant.Graph.Testability;

namespace DxAssistant.Server.Commands.Authoring;

/// <summary>What minutes and parts trade for, a point for each price.</summary>
/// <param name="All">The mean over the series, where each symptom weighs as often as it is met.</param>
/// <param name="Each">The same of each symptom, by id.</param>
internal sealed record TradeFigures(ImmutableArray<PricePoint> All,
    ImmutableArray<(SymptomId Symptom, ImmutableArray<PricePoint> Points)> Each);
