using System.Collections.Immutable;
using System.Text.Json.Nodes;
using DxAssistant.Graph.Model;
using DxAssistant.Graph.Testability;

namespace DxAssistant.Server.Commands;

/// <summary>The figures of the pages for programs.</summary>
internal static class StatsJson
{
    public static JsonObject Of(ImmutableArray<SeriesStats> all, ImmutableArray<PriceStats> prices, Role role) => new()
    {
        ["role"] = role.Id,
        ["series"] = new JsonArray([.. all.Select(Of)]),
        ["trade"] = new JsonArray([.. prices.Select(price => new JsonObject
        {
            ["factor"] = price.Factor, ["minutes"] = price.Minutes, ["repairsInVain"] = price.InVain,
        })]),
    };

    private static JsonObject Of(SeriesStats series) => new()
    {
        ["series"] = series.Series,
        ["seed"] = series.Report.Seed,
        ["symptoms"] = new JsonArray([.. series.Report.Symptoms.Select(Of)]),
        ["overall"] = Of(series.Report.Overall),
        ["toldApartByNoCheck"] = new JsonArray([.. series.Report.ToldApartByNoCheck.Select(Names)]),
    };

    private static JsonObject Of(SymptomFigures symptom) => new()
    {
        ["symptom"] = symptom.Symptom.Value,
        ["weight"] = symptom.Weight,
        ["faults"] = symptom.Faults,
        ["detected"] = symptom.Detected,
        ["isolatableTo"] = new JsonArray([.. Enumerable.Range(1, WalkFigures.MostRepairs)
            .Select(repairs => JsonValue.Create(symptom.IsolatableTo(repairs)))]),
        ["meanGroup"] = symptom.MeanGroup,
        ["groups"] = new JsonArray([.. symptom.Groups.Where(group => group.Faults.Length > 1).Select(Names)]),
        ["walks"] = Of(symptom.Walks),
        ["pricedMinutes"] = symptom.PricedMinutes,
        ["leastMinutes"] = symptom.LeastMinutes,
    };

    private static JsonObject Of(OverallFigures overall) => new()
    {
        ["detected"] = overall.Detected,
        ["isolatableTo"] = new JsonArray([.. overall.IsolatableTo.Select(share => JsonValue.Create(share))]),
        ["meanGroup"] = overall.MeanGroup,
        ["walks"] = Of(overall.Walks),
        ["pricedMinutes"] = overall.PricedMinutes,
        ["leastMinutes"] = overall.LeastMinutes,
    };

    private static JsonObject? Of(WalkFigures? walks) => walks is null ? null : new JsonObject
    {
        ["exact"] = walks.IsExact,
        ["count"] = walks.Count,
        ["checks"] = Of(walks.Checks),
        ["minutes"] = Of(walks.Minutes),
        ["repairsInVain"] = Of(walks.RepairsInVain),
        ["handedOver"] = Of(walks.HandedOver),
        ["isolatedTo"] = new JsonArray([.. walks.IsolatedTo.Select(Of)]),
    };

    // An interval that a single walk cannot give is null.
    private static JsonNode Of(Estimate estimate) => new JsonObject
    {
        ["value"] = estimate.Value,
        ["halfWidth"] = double.IsFinite(estimate.HalfWidth) ? estimate.HalfWidth : null,
    };

    private static JsonNode Names(AmbiguityGroup group) =>
        new JsonArray([.. group.Faults.Select(fault => JsonValue.Create(fault.Value))]);
}
