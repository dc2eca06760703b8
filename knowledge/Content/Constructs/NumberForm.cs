using DxAssistant.Knowledge.Quantities;

namespace DxAssistant.Knowledge.Content.Constructs;

/// <summary>Finds what an author meant by a quantity that is not written as pages write them.</summary>
internal static class NumberForm
{
    private static readonly (string Word, string Symbol)[] Words =
    [
        ("ohm", "Ω"), ("ohms", "Ω"), ("kohm", "kΩ"), ("kohms", "kΩ"), ("volt", "V"), ("volts", "V"), ("amp", "A"),
        ("amps", "A"),
        ("percent", "%"), ("kelvin", "K"), ("C", "°C"), ("F", "°F"), ("hertz", "Hz"), ("meters", "m"), ("metres", "m"),
    ];

    /// <summary>What to write, with the reason; null when nobody can tell.</summary>
    /// <param name="kind">What the number measures.</param>
    /// <param name="unit">The unit of the reading beside it, when it is of that kind.</param>
    public static string? Instead(string text, QuantityKind kind, Unit? unit)
    {
        if (Number.Read(text) is not null) return unit is null ? null : $"write the unit too: `{text} {unit.Symbol}`";
        string pointed = Pointed(text), said = InSymbols(pointed);
        if (said == text || !QuantityText.TryParse(said, kind, out _)) return null;
        return pointed == text
            ? $"write `{said}`"
            : $"write `{said}`: a point stands before the fraction, a comma only between thousands";
    }

    private static string Pointed(string text) =>
        text.Count(c => c == ',') == 1 && !text.Contains('.') ? text.Replace(',', '.') : text;

    private static string InSymbols(string text)
    {
        int at = text.IndexOf(text.FirstOrDefault(char.IsLetter));
        if (at <= 0) return text;
        string symbol = Words.FirstOrDefault(
            pair => string.Equals(pair.Word, text[at..].Trim(), StringComparison.OrdinalIgnoreCase)).Symbol;
        return symbol is null ? text : $"{text[..at].Trim()} {symbol}";
    }
}
