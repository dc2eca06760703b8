using System.Collections.Immutable;

namespace DxAssistant.Knowledge.Glyphs.Spelling;

/// <summary>
/// Whether a message about a display says that all of it is lit: something whole, something that can light, and that it
/// does.
/// </summary>
internal static class FullDisplay
{
    private static readonly string[] Whole = ["all", "every", "everything", "whole", "full", "entire", "both", "each"];
    private static readonly string[] Lights = ["segment", "segments", "bar", "bars", "bits", "display", "screen",
        "digits", "digit", "lines", "strokes", "panel", "pixels", "leds", "elements"];
    private static readonly string[] Lit =
        ["lit", "on", "glowing", "lights", "light", "illuminated", "lighting", "flashing", "showing"];
    private static readonly string[] Dark =
        ["dark", "dead", "out", "blank", "missing", "nothing", "empty", "dim", "dash", "dashes", "not"];
    private static readonly string[] Eights = ["eights", "8s", "8's"];

    public static bool Says(string text)
    {
        ImmutableArray<SpelledWord> words = SpelledWord.Cut(text);
        bool Has(string[] any) => words.Any(word => any.Contains(word.Lower));
        bool eights = Has(Eights) || Enumerable.Range(1, Math.Max(0, words.Length - 1))
            .Any(at => words[at].Lower == "s" && words[at - 1].Lower == "8");
        bool segments = words.Any(word => word.Lower is "segment" or "segments" or "bars" or "bar");
        bool everything = words.Any(word => word.Lower is "everything" or "all")
            && words.Any(word => word.Lower == "lit");
        return Has(Whole) && !Has(Dark) && (eights || segments || everything || (Has(Lights) && Has(Lit)));
    }
}
