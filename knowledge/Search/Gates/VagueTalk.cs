using System.Collections.Frozen;
using System.Collections.Immutable;
using DxAssistant.Knowledge.Search.Terms;

namespace DxAssistant.Knowledge.Search.Gates;

/// <summary>
/// Messages that say only that something is wrong with the unit, or that a lamp blinks: "it's broken", "light
/// blinking".
/// </summary>
internal static class VagueTalk
{
    private const string Troubles = """
        broken broke busted bust fault faults faulty failed failing fail problem problems issue issues trouble troubles wrong
        weird odd strange funny acting acts playing plays right properly normally correctly working work works worked
        function functioning error errors code codes repair repaired fixing malfunction malfunctioning help
        blink blinks blinking flash flashes flashing
        """;

    private const string Machines =
        "ac aircon hvac unit units minisplit minisplits split system machine conditioner conditioning heatpump heat "
            + "pump air light lights lamp lamps led leds green red yellow orange";

    private const string Not = "not";

    private static readonly FrozenSet<string> Trouble = Set(Troubles);
    private static readonly FrozenSet<string> Machine = Set(Machines);

    /// <summary>
    /// Whether every word is of trouble, of the machine as a whole, or of no meaning, and one of them is of trouble.
    /// </summary>
    public static bool Is(ImmutableArray<Word> words) =>
        words.Any(word => Trouble.Contains(word.Text)) && IsAboutMachine(words)
            && words.All(word => IsEmpty(word.Text));

    private static bool IsEmpty(string word) =>
        Trouble.Contains(word) || Machine.Contains(word) || word == Not
            || (Fillers.Contains(word) && !char.IsDigit(word[0]));

    // "heat" and "air" are of the machine only in its name.
    private static bool IsAboutMachine(ImmutableArray<Word> words) =>
        Follows(words, "heat", "pump") && Follows(words, "air", "conditioner", "conditioning", "con");

    private static bool Follows(ImmutableArray<Word> words, string first, params ReadOnlySpan<string> names)
    {
        for (var at = 0; at < words.Length; at++)
        {
            if (words[at].Text == first && (at + 1 >= words.Length || !names.Contains(words[at + 1].Text)))
                return false;
        }

        return true;
    }

    private static FrozenSet<string> Set(string words) =>
        words.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries).ToFrozenSet(StringComparer.Ordinal);
}
