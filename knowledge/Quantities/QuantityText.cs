using System.Diagnostics.CodeAnalysis;
using System.Globalization;

namespace DxAssistant.Knowledge.Quantities;

/// <summary>Reads a quantity as content pages write it: a number, a space or none, an exact unit.</summary>
public static class QuantityText
{
    /// <summary>Reads <c>0.05 Ω</c>, <c>−20 °C</c>, <c>1,500 m</c>, <c>5 %</c> or a plain number.</summary>
    public static bool TryParse(string? text, [NotNullWhen(true)] out Quantity? quantity)
    {
        quantity = Split(text) is var (number, symbol) && Unit.TryParse(symbol, out var unit)
            ? new Quantity(number, unit) : null;
        return quantity is not null;
    }

    /// <summary>Reads a quantity of a kind, so that <c>5 K</c> can be a temperature and <c>10 kPa</c> a gauge
    /// pressure.</summary>
    public static bool TryParse(string? text, QuantityKind kind, [NotNullWhen(true)] out Quantity? quantity)
    {
        quantity = Split(text) is var (number, symbol) && Unit.TryParse(symbol, kind, out var unit)
            ? new Quantity(number, unit) : null;
        return quantity is not null;
    }

    /// <summary>Reads a number alone, with a point for the fraction and commas only between thousands.</summary>
    internal static bool TryNumber(string text, out double number)
    {
        var plain = text.Trim().Replace('\u2212', '-');
        var style = NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint | NumberStyles.AllowExponent;
        return double.TryParse(WithoutThousands(plain), style, CultureInfo.InvariantCulture, out number)
            && double.IsFinite(number);
    }

    private static (double Number, string Symbol)? Split(string? text)
    {
        var trimmed = (text ?? "").Trim();
        var end = 0;
        while (end < trimmed.Length && (char.IsAsciiDigit(trimmed[end])
            || "+-\u2212.,".Contains(trimmed[end], StringComparison.Ordinal)))
            end++;
        if (end < trimmed.Length - 1 && trimmed[end] is 'e' or 'E'
            && trimmed[end + 1] is '-' or '+' or (>= '0' and <= '9'))
            end = ExponentEnd(trimmed, end);
        return TryNumber(trimmed[..end], out var number) ? (number, trimmed[end..].Trim()) : null;
    }

    private static int ExponentEnd(string text, int at)
    {
        var end = at + 2;
        while (end < text.Length && char.IsAsciiDigit(text[end]))
            end++;
        return end;
    }

    // "1,500" is fifteen hundred; "1,5" is not a number here, because it could be one and a half.
    private static string WithoutThousands(string text)
    {
        if (!text.Contains(',', StringComparison.Ordinal))
            return text;
        var groups = text.TrimStart('+', '-').Split('.')[0].Split(',');
        var grouped = groups[0].Length is >= 1 and <= 3 && groups.Skip(1).All(group => group.Length == 3);
        return grouped ? text.Replace(",", "", StringComparison.Ordinal) : "";
    }
}
