using DxAssistant.Knowledge.Quantities;

namespace DxAssistant.Knowledge.Content.Constructs;

/// <summary>Reads what a safety step must not exceed, written <c>at most 30 V</c>.</summary>
internal static class SafeWhen
{
    private const string Mark = "at most ";

    /// <summary>The limit, or null when the text is not of that form.</summary>
    public static Quantity? Read(string text) =>
        text.StartsWith(Mark, StringComparison.Ordinal)
            && QuantityText.TryParse(text[Mark.Length..], out Quantity? limit)
            ? limit
            : null;
}
