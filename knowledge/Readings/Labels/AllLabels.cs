using DxAssistant.Knowledge.Readings.Text;

namespace DxAssistant.Knowledge.Readings.Labels;

/// <summary>Recognises that one value holds for every line: "all three", "same on all", "each", "both".</summary>
internal static class AllLabels
{
    private static readonly string[] Nouns = ["phases", "legs", "windings", "lines", "of", "around", "round", "same"];

    public static LabelMention? At(TokenList tokens, int first)
    {
        int end = End(tokens, first, out int count);
        return end == first ? null : new LabelMention(first, end, "", LabelKind.All, count);
    }

    private static int End(TokenList tokens, int first, out int count)
    {
        count = 0;
        switch (tokens[first].Lower)
        {
            case "each" or "everywhere":
                return first + 1;
            case "both" when tokens[first + 1].Lower is not ("ways" or "times" or "directions"):
                count = 2;
                return first + 1;
            case "same" when tokens[first + 1].Lower is "on" or "for" or "across" && tokens[first + 2].Is("all"):
                return AfterAll(tokens, first + 2, out count) is var end && end > first + 2 ? end : first + 3;
            case "all":
                return AfterAll(tokens, first, out count);
            case "across" when tokens[first + 1].Is("the") && tokens[first + 2].Is("board"):
                return first + 3;
            default:
                return first;
        }
    }

    private static int AfterAll(TokenList tokens, int first, out int count)
    {
        Token next = tokens[first + 1];
        count = next.Lower switch { "three" or "3" => 3, "two" or "2" => 2, "four" or "4" => 4, "five" or "5" => 5,
            "six" or "6" => 6, _ => 0 };
        if (count > 0)
        {
            return first + (Nouns.Contains(tokens[first + 2].Lower) ? 3 : 2);
        }
        bool noun = Nouns.Contains(next.Lower) || (next.Is("the") && tokens[first + 2].Is("same"));
        bool alone = tokens[first - 1].Lower is "on" or "at" or "across" or "in" or "for"
            or "they're" or "theyre" or "are" or "were"
            || next.IsNumber || (first == 0 && next.Lower is "open" or "ol" or "shorted" or "read" or "are");
        return noun ? first + (next.Is("the") ? 3 : 2) : alone ? first + 1 : first;
    }
}
