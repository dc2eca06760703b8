using System.Globalization;
using System.Text.RegularExpressions;

namespace DxAssistant.Knowledge.Glyphs.Finding;

/// <summary>
/// Works out a character that is told by its look: "backwards 3", "upside down 7", "an 8 with the middle out".
/// </summary>
internal static class DescribedShapes
{
    // Nearest first, a letter only where no digit has the shape.
    private const string Characters = "0123456789AbCdEFGHJLnoPqrtUy-";

    private const string BarNamed =
        @"(?<bar>(?:top|bottom|upper|lower)[ -](?:left|right)|middle|cent(?:er|re)|top|bottom)(?:\s+(?:hand|bar|segment|line|stroke|piece|part))*";

    private const string Mirrored = "afedcbg";

    private static readonly (string Name, Segments Lit)[] Bars =
    [
        ("top left", Segments.F), ("upper left", Segments.F), ("top right", Segments.B), ("upper right", Segments.B),
        ("bottom left", Segments.E), ("lower left", Segments.E), ("bottom right", Segments.C),
        ("lower right", Segments.C),
        ("middle", Segments.G), ("center", Segments.G), ("centre", Segments.G), ("top", Segments.A),
        ("bottom", Segments.D),
    ];

    // Interpreted: what would be generated for these two is too much for a phone to load.
    private static readonly Regex Turned = new(
        @"\b(?<how>backwards?|reversed?|mirrored|mirror image|up ?side[ -]?down|inverted|rotated)\s+(?:letter\s+|number\s+)?(?<of>[a-z0-9]|zero|one|two|three|four|five|six|seven|eight|nine)\b",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex Dark = new(
        @"\b(?<of>[a-z0-9])(?:\s+(?:but|where|and|with|on|of|only|is|its))*\s+(?:(?:without|missing|minus|no)\s+(?:the\s+|its\s+)?" + BarNamed + @"(?:\s+(?:on|of)\s+it\b)?|(?:(?:with|but|where)\s+)?(?:the\s+|its\s+)?" + BarNamed
            + @"(?:\s+(?:is|of|on|the|it|8|seems))*\s+(?:out|missing|dark|dead|off|gone|not lit|unlit|broken)\b)(?:\s+on\s+the\s+[a-z0-9]\b)?",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    /// <summary>The text with every described character put in place of its description.</summary>
    public static string Resolve(string text)
    {
        string turned =
            Turned.Replace(text, match => Turn(match.Groups["how"].Value, Character(match.Groups["of"].Value)));
        return Dark.Replace(turned, match => Darken(match.Groups["of"].Value[0], match.Groups["bar"].Value));
    }

    /// <summary>The character that another one looks like on its head.</summary>
    public static string UpsideDown(char of) => Nearest(Shape(of), lit => Moved(lit, "defabcg"));

    private static string Turn(string how, char of)
    {
        bool rotated = how.StartsWith("up", StringComparison.OrdinalIgnoreCase)
            || how.StartsWith("inverted", StringComparison.OrdinalIgnoreCase)
            || how.StartsWith("rotated", StringComparison.OrdinalIgnoreCase);
        return rotated ? UpsideDown(of) : Nearest(Shape(of), lit => Moved(lit, Mirrored));
    }

    private static char Character(string said) =>
        said.Length == 1 ? said[0] : SpokenCharacters.Small(said.ToLowerInvariant())![0];

    private static string Darken(char of, string bar) =>
        Nearest(Shape(of), lit => lit & ~Bars.First(named => named.Name == Plain(bar)).Lit);

    private static string Plain(string bar) => bar.Replace('-', ' ').Replace("hand ", "", StringComparison.Ordinal);

    private static Segments Shape(char of) => SegmentTable.TryGet(of, out Segments lit) ? lit
        : SegmentTable.TryGet(char.ToUpper(of, CultureInfo.InvariantCulture), out lit) ? lit : Segments.None;

    private static string Nearest(Segments lit, Func<Segments, Segments> change)
    {
        Segments shape = change(lit);
        // Of two as near, the one that lights nothing dark, then the one that is as even.
        return Characters.MinBy(one =>
            (Shape(one).DistanceTo(shape), (Shape(one) & ~shape) != Segments.None, IsEven(Shape(one)) != IsEven(shape)))
            .ToString();
    }

    private static bool IsEven(Segments lit) => Moved(lit, Mirrored) == lit;

    /// <param name="places">Where the light of segment a, b, c … goes.</param>
    private static Segments Moved(Segments lit, string places) => SegmentsText.FromLetters(
        string.Concat(lit.ToLetters().Select(letter => places[letter - 'a'])));
}
