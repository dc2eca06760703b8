using System.Collections.Frozen;
using System.Collections.Immutable;
using System.Globalization;
using DxAssistant.Knowledge.Readings.Text;

namespace DxAssistant.Knowledge.Glyphs.Finding;

/// <summary>Finds counts of blinks: "blinks five times", "5 blinks", "green 3 red 1", "two long three short".</summary>
internal static class BlinkFinder
{
    private const int MostBlinks = 30;
    private const int Reach = 4;

    private static readonly string[] Verbs =
        ["blink", "blinks", "blinking", "blinked", "flash", "flashes", "flashing", "flashed", "pulse", "pulses",
            "pulsing", "blip", "blips", "wink", "winks", "winking", "winked", "strobes", "strobing", "flicker",
            "flickers"];

    private static readonly string[] Goes = ["goes", "go", "going", "does", "is", "has", "was", "keeps", "comes",
        "blinks", "flashes", "winks", "blinking", "flashing"];

    private static readonly string[] LampNouns = ["led", "leds", "lamp", "light", "lights", "diode", "indicator"];

    private static readonly string[] NotLit = ["none", "nothing", "dark", "off", "zero", "0"];

    private static readonly FrozenDictionary<string, string> ShortNames = new Dictionary<string, string>
    {
        ["grn"] = "green", ["greens"] = "green", ["reds"] = "red", ["yel"] = "yellow", ["yellows"] = "yellow",
        ["amb"] = "amber", ["org"] = "orange",
        ["oranges"] = "orange", ["blu"] = "blue", ["blues"] = "blue", ["wht"] = "white", ["whites"] = "white",
    }.ToFrozenDictionary(StringComparer.Ordinal);

    public static readonly string[] Lamps =
        ["green", "red", "amber", "yellow", "orange", "blue", "white", "power", "timer", "operation", "run", "left",
            "right", "top", "bottom", "middle", "long", "short"];

    public static readonly string[] Order = ["first", "second", "third", "fourth"];

    /// <summary>The counts outside a code; null if there are none.</summary>
    public static Blinks? In(TokenList tokens, CodeRun? code)
    {
        var counts = new List<(LampCount Lamp, int First, int End)>();
        bool? lampFirst = null;
        for (int at = 0; at < tokens.Count; at++)
        {
            bool inCode = code is not null && at >= code.First && at < code.End;
            if (!inCode && !IsPronoun(tokens, at) && CountAt(tokens, at, out int end) is { } count
                && count is > 0 and <= MostBlinks
                && At(tokens, at, end, count, lampFirst) is { } lamp)
            {
                lampFirst ??= LampNear(tokens, at - 1, forward: false) is not null;
                counts.Add((lamp, at, end));
                at = end - 1;
            }
        }
        // The same count again is the pattern over again.
        if (counts.Count > 1
            && counts.TrueForAll(count => count.Lamp.Lamp.Length == 0 && count.Lamp.Blinks == counts[0].Lamp.Blinks))
        {
            counts.RemoveRange(1, counts.Count - 1);
        }
        bool named = counts.Count(count => count.Lamp.Lamp.Length > 0) + (IsDarkNamed(tokens) ? 1 : 0) >= 2;
        bool said = named || Enumerable.Range(0, tokens.Count).Any(at => Verbs.Contains(tokens[at].Lower))
            || (counts.Count == 1 && Enumerable.Range(0, tokens.Count).Any(at => LampNouns.Contains(tokens[at].Lower)));
        return counts.Count == 0 || !said ? null
            : new Blinks(counts[0].First, counts[^1].End, [.. Named([.. counts.Select(count => count.Lamp)])],
                counts.Count == 1 ? counts[0].Lamp.Blinks : null);
    }

    // "2 blinks, pause, 3 blinks": one lamp, told apart by order.
    private static IEnumerable<LampCount> Named(List<LampCount> counts) =>
        counts.Count > 1 && counts.TrueForAll(count => count.Lamp.Length == 0) && counts.Count <= Order.Length
            ? counts.Select((count, place) => count with { Lamp = Order[place] })
            : counts.Where(count => count.Lamp.Length > 0);

    // "green 3, red none"
    private static bool IsDarkNamed(TokenList tokens) => Enumerable.Range(1, Math.Max(0, tokens.Count - 1)).Any(at =>
        NotLit.Contains(tokens[at].Lower)
            && (LampName(tokens[at - 1].Lower) is not null
                || (tokens[at - 1].Is("is") && LampName(tokens[at - 2].Lower) is not null)));

    private static string? LampName(string word) => Lamps.Contains(word) ? word : ShortNames.GetValueOrDefault(word);

    // "the orange one goes 4 times and the green one 2"
    private static bool IsPronoun(TokenList tokens, int at) =>
        tokens[at].Is("one") && LampName(tokens[at - 1].Lower) is not null
        && (Goes.Contains(tokens[at + 1].Lower) || CountAt(tokens, at + 1, out _) is not null);

    private static int? CountAt(TokenList tokens, int at, out int end)
    {
        end = at + 1;
        Token token = tokens[at];
        string? digits = token.IsWhole && token.Length <= 2 ? token.Text : token.IsWord ? Word(token.Lower) : null;
        return digits is null ? null : int.Parse(digits, CultureInfo.InvariantCulture);
    }

    private static string? Word(string word) => word switch
    {
        "once" => "1",
        "twice" => "2",
        "thrice" => "3",
        _ => SpokenCharacters.Small(word),
    };

    // A count of blinks has "times" or a blink behind it, a lamp beside it, or a blink shortly before it.
    private static LampCount? At(TokenList tokens, int first, int end, int count, bool? lampFirst)
    {
        bool times = tokens[end].Lower is "times" or "time" or "x"
            || tokens[first].Lower is "once" or "twice" or "thrice";
        string? before = lampFirst is false ? null : LampNear(tokens, first - 1, forward: false);
        string? after = before is not null || lampFirst is true ? null
            : LampNear(tokens, times ? end + 1 : end, forward: true);
        bool verbAfter = Verbs.Contains(tokens[after is null ? end : end + 1].Lower);
        bool verbBefore = HasVerbBefore(tokens, first);
        bool plain = verbAfter && (tokens[end].Lower is not ("flashing" or "blinking") || times) || verbBefore
            && (times || count < 10);
        bool unit = tokens[end].IsOneOf("°%") || (tokens[end].IsWord && tokens[end].Glued)
            || tokens[end].Lower is "minutes" or "seconds" or "volts" or "amps" or "ohms"
                or "psi" or "degrees" or "second";
        // "lamp 4 times", "led: 6", "blink code 8"
        plain |= (HasLampNoun(tokens) && (times || SpeaksOfPause(tokens))) || IsCountOf(tokens, first);
        return unit || !(plain || after is not null || before is not null) ? null
            : new LampCount(before ?? after ?? "", count);
    }

    private static bool HasLampNoun(TokenList tokens) =>
        Enumerable.Range(0, tokens.Count).Any(at => LampNouns.Contains(tokens[at].Lower));

    private static bool SpeaksOfPause(TokenList tokens) =>
        Enumerable.Range(0, tokens.Count)
            .Any(at => tokens[at].Lower is "pause" or "pauses" or "gap" or "break" or "repeats");

    private static bool IsCountOf(TokenList tokens, int first) =>
        (tokens[first - 1].IsOneOf(":=") && LampNouns.Contains(tokens[first - 2].Lower))
        || (tokens[first - 1].Lower is "code" or "count"
            && (Verbs.Contains(tokens[first - 2].Lower) || LampNouns.Contains(tokens[first - 2].Lower)));

    private static bool HasVerbBefore(TokenList tokens, int first)
    {
        for (int at = first - 1; at >= first - Reach && at >= 0 && !tokens[at].IsOneOf(",;."); at--)
        {
            if (Verbs.Contains(tokens[at].Lower))
            {
                return true;
            }
        }
        return false;
    }

    private static string? LampNear(TokenList tokens, int at, bool forward)
    {
        int step = forward ? 1 : -1;
        for (int i = 0; i < 3; i++, at += step)
        {
            string word = tokens[at].Lower;
            if (LampName(word) is { } lamp)
            {
                return tokens[at + 1].Lower is "pause" or "gap" or "break" or "wait" ? null : lamp;
            }
            if (!Verbs.Contains(word) && !tokens[at].IsOneOf(":=") && !IsPronoun(tokens, at)
                && word is not ("led" or "light" or "lamp" or "is" or "on" or "the" or "goes" or "does"))
            {
                return null;
            }
        }
        return null;
    }
}
