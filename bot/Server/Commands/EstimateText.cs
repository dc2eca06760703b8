using System.Globalization;
using DxAssistant.Graph.Testability;

namespace DxAssistant.Server.Commands;

/// <summary>A figure with its 95 % interval in words.</summary>
internal static class EstimateText
{
    /// <summary>
    /// ± where it may be off as far to either side, both ends in brackets where not, "at most" where nothing was met,
    /// "all alike" where what was drawn does not say how far off it may be; a single draw has no interval.
    /// </summary>
    public static string Of(Estimate figure, string format)
    {
        if (!double.IsFinite(figure.High)) return $"{Of(figure.Value, format)} ± ?";
        if (figure.High == figure.Low) return $"{Of(figure.Value, format)}, all alike";
        if (figure is { Value: 0, Low: 0 }) return $"{Of(0, format)}, at most {Of(figure.High, format)}";
        return IsEven(figure)
            ? $"{Of(figure.Value, format)} ± {Either(figure.HalfWidth, format)}"
            : $"{Of(figure.Value, format)} ({Of(figure.Low, format)}–{Of(figure.High, format)})";
    }

    // What is too little for the digits written is not nothing.
    private static string Either(double halfWidth, string format)
    {
        double digit = Math.Pow(10, -Decimals(format));
        return halfWidth < digit / 2 ? $"under {Of(digit, format)}" : Of(halfWidth, format);
    }

    private static int Decimals(string format) => format.Contains('.', StringComparison.Ordinal)
        ? format.Length - 1 - format.IndexOf('.', StringComparison.Ordinal)
        : 0;

    public static string Of(double value, string format) => value.ToString(format, CultureInfo.InvariantCulture);

    // The last bits of either side do not count.
    private static bool IsEven(Estimate figure) =>
        Math.Abs(figure.High - figure.Value - (figure.Value - figure.Low)) <= 1e-9 * (figure.High - figure.Low);
}
