using DxAssistant.Knowledge.Readings.Text;

namespace DxAssistant.Knowledge.Glyphs.Finding;

/// <summary>Recognises a display with every segment on: "all segments lit", "everything lit up", "all
/// eights".</summary>
internal static class AllLit
{
    private static readonly string[] Lit = ["lit", "on", "light", "lights", "lighting", "glowing", "illuminated", "up",
        "flashing", "showing"];

    public static CodeRun? In(TokenList tokens)
    {
        for (int at = 0; at < tokens.Count; at++)
        {
            bool all = tokens[at].Lower is "all" or "every" or "everything";
            if (all && End(tokens, at) is { } end)
            {
                return new CodeRun(at, end, "88", false, false);
            }
        }
        return null;
    }

    private static int? End(TokenList tokens, int at)
    {
        int next = at + (tokens[at + 1].Lower is "the" or "of" ? 2 : 1);
        next += tokens[next].Is("the") ? 1 : 0;
        if (tokens[next].Lower is "eights" or "8s" or "8's")
        {
            return next + 1;
        }
        bool segments = tokens[next].Lower is "segments" or "segment" or "bars";
        bool everything = tokens[at].Is("everything") || (tokens[at].Is("all") && tokens[next].Is("lit"));
        int after = segments ? next + 1 : next;
        after += tokens[after].Lower is "are" or "is" or "were" or "of" ? 1 : 0;
        return segments ? (Lit.Contains(tokens[after].Lower) ? after + 1 : after)
            : everything && tokens[after].Is("lit") ? after + (tokens[after + 1].Is("up") ? 2 : 1) : null;
    }
}
