using DxAssistant.Knowledge.Quantities;

namespace DxAssistant.Knowledge.Content.Constructs;

/// <summary>Names kinds of quantities as people do.</summary>
internal static class KindWords
{
    /// <summary>The kind in small letters: <c>gauge pressure</c>.</summary>
    public static string Of(QuantityKind kind) => string.Concat(kind.ToString().Select((letter, place) =>
        (char.IsUpper(letter) && place > 0 ? " " : "") + char.ToLowerInvariant(letter)));

    /// <summary>The units of a kind, as they are to be written.</summary>
    public static string UnitsOf(QuantityKind kind) =>
        string.Join(", ", Unit.All.Where(unit => unit.Kind == kind).Select(unit => $"`{unit.Symbol}`").Distinct());
}
