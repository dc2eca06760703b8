using System.Collections.Immutable;
using System.Text.Json.Nodes;
using DxAssistant.Graph.Model;
using DxAssistant.Graph.Planning;
using DxAssistant.Graph.Testability;
using DxAssistant.Knowledge.Content;
using DxAssistant.Knowledge.Content.Model;
using DxAssistant.Knowledge.Walks;

namespace DxAssistant.Server.Commands.Authoring;

/// <summary>The figures of the pages for programs.</summary>
internal static class StatsJson
{
    public static JsonObject Of(ImmutableArray<SeriesStats> all, TradeFigures? trade, Role role, Library library,
        int work) => new()
    {
        ["work"] = work,
        ["conversationWork"] = LivePlanner.UsualWork,
        ["ruleLimits"] = Limits(library),
        ["role"] = role.Id,
        ["series"] = new JsonArray([.. all.Select(Of)]),
        ["trade"] = Of(trade?.All ?? []),
        ["tradeOfEach"] = new JsonObject(
            (trade?.Each ?? []).Select(each => KeyValuePair.Create(each.Symptom.Value, (JsonNode?)Of(each.Points)))),
    };

    private static JsonArray Of(ImmutableArray<PricePoint> prices) => new([.. prices.Select(price => new JsonObject
    {
        ["factor"] = price.Factor, ["minutes"] = Of(price.Minutes), ["partsInVain"] = Of(price.PartsInVain),
        ["minutesMore"] = Of(price.MinutesMore), ["partsSaved"] = Of(price.PartsSaved),
    })]);

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
        ["surelyIsolatableTo"] = new JsonArray([.. Enumerable.Range(1, WalkFigures.MostRepairs)
            .Select(repairs => JsonValue.Create(symptom.SurelyIsolatableTo(repairs)))]),
        ["meanLookAlikes"] = symptom.MeanLookAlikes,
        ["mistaken"] = new JsonArray([.. symptom.Mistaken.Select(pair => new JsonObject
        {
            ["faults"] = new JsonArray(pair.One.Value, pair.Other.Value), ["error"] = pair.Error,
        })]),
        ["groups"] = new JsonArray([.. symptom.Groups.Where(group => group.Faults.Length > 1).Select(Names)]),
        ["walks"] = Of(symptom.Walks),
        ["laid"] = Of(symptom.Laid),
        ["pricedMinutes"] = symptom.PricedMinutes,
        ["leastMinutes"] = symptom.LeastMinutes,
    };

    private static JsonObject Of(OverallFigures overall) => new()
    {
        ["detected"] = overall.Detected,
        ["isolatableTo"] = new JsonArray([.. overall.IsolatableTo.Select(share => JsonValue.Create(share))]),
        ["meanGroup"] = overall.MeanGroup,
        ["surelyIsolatableTo"] =
            new JsonArray([.. overall.SurelyIsolatableTo.Select(share => JsonValue.Create(share))]),
        ["meanLookAlikes"] = overall.MeanLookAlikes,
        ["walks"] = Of(overall.Walks),
        ["laid"] = Of(overall.Laid),
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
        ["partsInVain"] = Of(walks.PartsInVain),
        ["handedOver"] = Of(walks.HandedOver),
        ["isolatedTo"] = new JsonArray([.. walks.IsolatedTo.Select(Of)]),
    };

    // No number stands for "any": a gate of safety has no limit.
    private static JsonArray Limits(Library library) => new([.. Enum.GetValues<LaidRule>().Select(rule => new JsonObject
    {
        ["rule"] = RuleShapes.NameOf(rule),
        ["minutes"] = double.IsFinite(library.Settings.LimitOf(rule).Minutes)
            ? library.Settings.LimitOf(rule).Minutes
            : null,
        ["share"] = library.Settings.LimitOf(rule).Share,
    })]);

    private static JsonObject? Of(LaidFigures? laid) => laid is null ? null : new JsonObject
    {
        ["pricedMinutes"] = Of(laid.Priced),
        ["planAlone"] = Of(laid.Plain),
        ["cost"] = Of(laid.Cost),
        ["rules"] = new JsonArray([.. laid.Rules.Select(rule => new JsonObject
        {
            ["rule"] = rule.Rule, ["times"] = Of(rule.Times), ["mostMinutes"] = Of(rule.Minutes),
            ["heldBack"] = Of(rule.HeldBack),
        })]),
    };

    // An end of an interval that a single walk cannot give is null.
    private static JsonNode Of(Estimate estimate) => new JsonObject
    {
        ["value"] = estimate.Value,
        ["low"] = Finite(estimate.Low),
        ["high"] = Finite(estimate.High),
        ["halfWidth"] = Finite(estimate.HalfWidth),
    };

    private static double? Finite(double value) => double.IsFinite(value) ? value : null;

    private static JsonNode Names(AmbiguityGroup group) =>
        new JsonArray([.. group.Faults.Select(fault => JsonValue.Create(fault.Value))]);
}
