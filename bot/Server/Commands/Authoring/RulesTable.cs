using System.Collections.Immutable;
using DxAssistant.Graph.Testability;
using DxAssistant.Knowledge.Content;
using DxAssistant.Knowledge.Content.Model;
using DxAssistant.Knowledge.Walks;

namespace DxAssistant.Server.Commands.Authoring;

/// <summary>
/// Writes what the rules laid over the plan cost, and how far from the best possible the walks are then.
/// </summary>
internal static class RulesTable
{
    private const string Head =
        "\nPriced minutes count parts changed for nothing and faults left unfound. Each unit is walked both ways.\n\n"
        + "| symptom | as conversations walk | by the plan alone | the rules cost | least possible | over the least "
        + "possible |\n|---|---|---|---|---|---|\n";

    private const string RulesHead =
        "\n| rule over the plan | may cost at a step | steps it chooses in a walk | minutes it costs a walk, at most | "
            + "steps in a walk at which that limit holds it back |\n|---|---|---|---|---|\n";

    public static void Write(TestabilityReport report, Library library, TextWriter output)
    {
        if (report.Overall.Laid is not { } overall) return;
        output.Write(Head);
        foreach (SymptomFigures symptom in report.Symptoms)
            Row(symptom.Symptom.Value, symptom.Laid, symptom.LeastMinutes, output);
        Row("all, as often as met", overall, report.Overall.LeastMinutes, output);
        output.Write(RulesHead);
        foreach (LaidRule rule in Enum.GetValues<LaidRule>())
            output.Write(
                $"| {RuleShapes.NameOf(rule)} | {Most(library.Settings.LimitOf(rule))} | {Cells(overall, RuleShapes.NameOf(rule))} |\n");
    }

    private static void Row(string name, LaidFigures? laid, double? least, TextWriter output)
    {
        if (laid is null) return;
        string over = least is > 0
            ? StatsTable.Figure(laid.Priced.Times(100 / least.Value).Plus(-100), "0", false) + " %"
            : "–";
        output.Write(
            $"| {name} | {StatsTable.Figure(laid.Priced, "0.0", false)} | {StatsTable.Figure(laid.Plain, "0.0", false)} | {StatsTable.Figure(laid.Cost, "0.0", false)}"
            + $" | {(least is { } known ? EstimateText.Of(known, "0.0") : "–")} | {over} |\n");
    }

    private static string Most(RuleLimit limit) => double.IsFinite(limit.Minutes)
        ? $"{EstimateText.Of(limit.Minutes, "0.#")} min or {EstimateText.Of(limit.Share * 100, "0.#")} %"
        : "any";

    private static string Cells(LaidFigures laid, string rule) =>
        laid.Rules.FirstOrDefault(each => each.Rule == rule) is { } figure
        ? $"{EstimateText.Of(figure.Times, "0.00")} | {EstimateText.Of(figure.Minutes, "0.0")} | {EstimateText.Of(figure.HeldBack, "0.00")}"
        : $"never in {laid.Walks} walks | – | –";
}
