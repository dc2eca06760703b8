using System.Collections.Immutable;
using DxAssistant.Knowledge.Glyphs;
using DxAssistant.Knowledge.Quantities;

namespace DxAssistant.Knowledge.Calculations;

/// <summary>Seven-segment characters, by name.</summary>
internal static class GlyphCalculations
{
    private static readonly Citation Table = new("Segment tables for letters and digits, encyclopedic pages",
        "not standardized");
    private static readonly CalculationInput One = CalculationInput.Word("char1");
    private static readonly CalculationInput Two = CalculationInput.Word("char2");

    public static ImmutableArray<Calculation> All =>
    [
        new("seg-confusable", "Whether two characters light the same segments", "table", Table,
            [One, Two], [new("same_segments", null)], given => OfTwo(given, (one, two) => given.Answer(one == two))),
        new("seg-distance", "Segments by which two characters differ",
            "table; segments lit in one and not in the other", Table,
            [One, Two], [new("differing_segments", null), new("distance", Units.Each)],
            given => OfTwo(given, (one, two) => given.Answer((one ^ two).ToLetters(), one.DistanceTo(two)))),
        new("seg-glyph", "Segments that a character lights", "table", Table,
            [CalculationInput.Word("char")], [new("segments", null)],
            given => Lit(given.Word("char"), out var lit) ?? given.Answer(lit.ToLetters())),
    ];

    private static CalculationResult OfTwo(Given given, Func<Segments, Segments, CalculationResult> answer) =>
        Lit(given.Word("char1"), out var one) ?? Lit(given.Word("char2"), out var two) ?? answer(one, two);

    private static CalculationResult? Lit(string character, out Segments lit)
    {
        lit = default;
        if (character.Length != 1)
            return Given.Invalid("one character is needed");
        return SegmentTable.TryGet(character[0], out lit) ? null : Given.OutOfRange($"{character} has no agreed shape");
    }
}
