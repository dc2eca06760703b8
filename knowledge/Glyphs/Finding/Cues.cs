using System.Collections.Frozen;
using DxAssistant.Knowledge.Readings.Text;

namespace DxAssistant.Knowledge.Glyphs.Finding;

/// <summary>The words beside a code that say it is one.</summary>
internal static class Cues
{
    private const int Reach = 5;

    private static readonly FrozenSet<string> Code = Set("code codes error errors err fault faults alarm");

    private static readonly FrozenSet<string> Shown = Set(
        "display displays displaying displayed shows showing show showed says saying said reads reading flashing "
        + "flashes flash flashed blinking blinks panel screen readout throwing threw throws "
        + "gives giving gave got getting get seeing see sees lit popped popping stuck");

    private static readonly FrozenSet<string> Skipped = Set(
        "a an the is was it's its it of like just this that me something as number now up out with on in code codes "
        + "error fault be i think maybe either at to letters letter unit indoor outdoor and");

    private static readonly FrozenSet<string> Polite = Set(
        "hi hello hey please thanks i i'm have has steady solid led my there there's letters then on again "
        + "today not sure");

    private static readonly FrozenSet<string> Screen = Set(
        "display screen readout panel flashing flashes blinking segments digits");

    private static readonly FrozenSet<string> After = Set("flashing flashes blinking blinks code error fault alarm "
        + "flashed");

    /// <summary>How plainly the words say it: 2 for "code", 1 for "shows", 0 for nothing.</summary>
    public static int Beside(TokenList tokens, CodeRun run) =>
        Math.Max(Before(tokens, run.First), Follows(tokens, run.End));

    /// <summary>"Blink code 5" is a count of blinks.</summary>
    public static bool IsBlinkCode(TokenList tokens, int first) =>
        tokens[first - 1].Lower is "code" or "codes"
            && tokens[first - 2].Lower is "blink" or "flash" or "blinking" or "flashing" or "led";

    /// <summary>The token right before says that a code is shown.</summary>
    public static bool IsRightBefore(TokenList tokens, int first) => Code.Contains(tokens[first - 1].Lower)
        || Shown.Contains(tokens[first - 1].Lower);

    /// <summary>Words that may stand around a code that is all a message holds.</summary>
    public static bool IsFrame(Token token) => token.Kind == TokenKind.Symbol || Code.Contains(token.Lower)
        || Shown.Contains(token.Lower) || Skipped.Contains(token.Lower) || Polite.Contains(token.Lower);

    /// <summary>The message speaks of the display itself or of flashing.</summary>
    public static bool SpeakOfDisplay(TokenList tokens) =>
        Enumerable.Range(0, tokens.Count).Any(at => Screen.Contains(tokens[at].Lower));

    private static int Before(TokenList tokens, int first)
    {
        for (int at = first - 1; at >= first - Reach && at >= 0; at--)
        {
            Token token = tokens[at];
            if (Code.Contains(token.Lower))
            {
                return 2;
            }
            if (Shown.Contains(token.Lower))
            {
                return 1;
            }
            if (!Skipped.Contains(token.Lower) && !token.IsOneOf(":=\"'(#"))
            {
                return 0;
            }
        }
        return 0;
    }

    private static int Follows(TokenList tokens, int end)
    {
        int at = tokens[end].Lower is "is" or "keeps" or "was" || tokens[end].IsOneOf("\"'") ? end + 1 : end;
        bool shown = tokens[at].Is("on") && tokens[at + 1].Is("the")
            && tokens[at + 2].Lower is "display" or "screen" or "panel" or "readout" or "unit" or "led";
        shown |= tokens[at].Is("on") && tokens[at + 1].Lower is "both" or "each"
            && tokens[at + 2].Lower is "digits" or "displays";
        bool came = tokens[at].Lower is "came" or "comes" or "pops" or "popped" && tokens[at + 1].Is("up");
        return After.Contains(tokens[at].Lower) ? tokens[at].Lower is "code" or "error" or "fault" or "alarm" ? 2 : 1
            : shown || came ? 1 : 0;
    }

    private static FrozenSet<string> Set(string words) => words.Split(' ').ToFrozenSet(StringComparer.Ordinal);
}
