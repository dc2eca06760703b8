using System.Collections.Immutable;
using DxAssistant.Graph.Model;
using DxAssistant.Graph.Testability;

namespace DxAssistant.Server.Commands.Authoring;

/// <summary>Writes what minutes and parts trade for as Markdown tables.</summary>
internal static class TradeTable
{
    private const string Figures =
        "minutes | parts changed for nothing, a walk | more minutes | fewer such parts | minutes for each part "
            + "saved |\n";

    /// <param name="each">Also of each symptom.</param>
    public static void Write(TradeFigures trade, bool each, TextWriter output)
    {
        output.Write(
            "\n## Minutes against wrong parts\n\nThe same units at each price; differences are to the pages' own price.\n\n"
            + $"| price of a wrong part, times the pages' | {Figures}|---|---|---|---|---|---|\n");
        foreach (PricePoint point in trade.All) output.Write($"| {Cells(point)} |\n");
        if (each) WriteEach(trade.Each, output);
    }

    private static void WriteEach(ImmutableArray<(SymptomId Symptom, ImmutableArray<PricePoint> Points)> symptoms,
        TextWriter output)
    {
        output.Write(
            $"\n### Of each symptom\n\n| symptom | price of a wrong part, times the pages' | {Figures}|---|---|---|---|---|---|---|\n");
        foreach ((SymptomId symptom, ImmutableArray<PricePoint> points) in symptoms)
            foreach (PricePoint point in points) output.Write($"| {symptom} | {Cells(point)} |\n");
    }

    private static string Cells(PricePoint point)
    {
        bool isOwn = point.Factor == 1;
        return string.Join(" | ",
            EstimateText.Of(point.Factor, "0.#"), EstimateText.Of(point.Minutes, "0.0"),
            EstimateText.Of(point.PartsInVain, "0.000"),
            isOwn ? "–" : EstimateText.Of(point.MinutesMore, "0.0"), isOwn
                ? "–"
                : EstimateText.Of(point.PartsSaved, "0.000"), Rate(point));
    }

    // Where the saving may be chance, its price is none.
    private static string Rate(PricePoint point) => point.PartsSaved.Low > 0 || point.PartsSaved.High < 0
        ? EstimateText.Of(point.MinutesMore.Value / point.PartsSaved.Value, "0")
        : "–";
}
