using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using DxAssistant.Knowledge.Glyphs.Finding;

namespace DxAssistant.Knowledge.Glyphs;

/// <summary>
/// How lamps blink before they pause: one lamp some number of times, or several lamps each its own number.
/// </summary>
/// <remarks>A lone lamp that nobody named has the name "".</remarks>
public sealed class LampPattern
{
    private const int MostBlinks = 99;
    private const string Between = ", ";

    private LampPattern(IEnumerable<LampCount> lamps) =>
        Lamps = [.. lamps.OrderBy(lamp => lamp.Lamp, StringComparer.Ordinal)];

    /// <summary>One or more, by name, each name once.</summary>
    public ImmutableArray<LampCount> Lamps { get; }

    /// <summary>
    /// Reads a pattern as pages and cases write it: <c>3 blinks</c>, <c>red 3 blinks</c>, <c>green 3, red 1</c>.
    /// </summary>
    public static bool TryRead(string? look, [NotNullWhen(true)] out LampPattern? pattern)
    {
        LampCount?[] lamps = [.. (look ?? "").Split(Between).Select(Part)];
        bool isRead = lamps.All(lamp => lamp is not null)
            && lamps.Select(lamp => lamp!.Lamp).Distinct(StringComparer.Ordinal).Count() == lamps.Length
            && (lamps.Length == 1 || lamps.All(lamp => lamp!.Lamp.Length > 0));
        pattern = isRead ? new LampPattern(lamps.Select(lamp => lamp!)) : null;
        return isRead;
    }

    /// <summary>What was said of lamps; null if nothing was, or one lamp was given two counts.</summary>
    public static LampPattern? Of(GlyphReading reading)
    {
        IEnumerable<LampCount> lamps = reading.Lamps.IsEmpty && reading.Blinks is { } blinks
            ? [new LampCount("", blinks)] : reading.Lamps;
        return TryRead(Written(lamps), out LampPattern? pattern) ? pattern : null;
    }

    /// <summary>Whether somebody who told this may have seen that: every count is one of its lamps.</summary>
    public bool CanBe(LampPattern shown)
    {
        List<LampCount> left = [.. shown.Lamps];
        foreach (LampCount said in Lamps.OrderBy(lamp => IsPlace(lamp.Lamp)))
        {
            int at = left.FindIndex(lamp => lamp.Blinks == said.Blinks && Names(said.Lamp, lamp.Lamp));
            if (at < 0) return false;
            left.RemoveAt(at);
        }

        return true;
    }

    /// <summary>Whether this tells that pattern whole, each lamp by its name.</summary>
    public bool Tells(LampPattern shown) =>
        Lamps.SequenceEqual(shown.Lamps) || (shown.Lamps is [{ Lamp: "" }] && Lamps.Length == 1 && CanBe(shown));

    /// <summary>As pages write it.</summary>
    public override string ToString() => Written(Lamps);

    private static string Written(IEnumerable<LampCount> lamps) => lamps.ToList() is [var only]
        ? string.Create(CultureInfo.InvariantCulture, $"{only.Lamp} {only.Blinks} blinks").TrimStart()
        : string.Join(Between,
            lamps.Select(lamp => string.Create(CultureInfo.InvariantCulture, $"{lamp.Lamp} {lamp.Blinks}")));

    private static LampCount? Part(string text)
    {
        string[] words = text.Split(' ');
        if (words.Length > 1 && words[^1] is "blink" or "blinks") words = words[..^1];
        else if (words.Length == 1) return null;
        return (words is [_] || (words is [var name, _] && BlinkFinder.Lamps.Concat(BlinkFinder.Order).Contains(name)))
            && int.TryParse(words[^1], NumberStyles.None, CultureInfo.InvariantCulture, out int blinks)
            && blinks is >= 1 and <= MostBlinks
            ? new LampCount(words.Length == 1 ? "" : words[0], blinks) : null;
    }

    // Who counts "two, pause, three" has not told which lamp is which.
    private static bool IsPlace(string lamp) => lamp.Length == 0 || BlinkFinder.Order.Contains(lamp);

    private static bool Names(string said, string lamp) => said == lamp || lamp.Length == 0 || IsPlace(said);
}
