using DxAssistant.Knowledge.Readings.Text;

namespace DxAssistant.Knowledge.Readings.Mentions;

/// <summary>What stands between two mentions.</summary>
internal sealed class Gap(TokenList tokens, bool[] taken)
{
    /// <summary>Nothing but list marks, "and", and labels; a full stop only beside a label.</summary>
    public bool IsListed(Mention one, Mention other)
    {
        bool stop = false;
        bool label = false;
        for (int at = one.End; at < other.First; at++)
        {
            Token token = tokens[at];
            bool mark = token.IsOneOf(",;/&|\n-.") || (token.IsOneOf(":=") && at > 0 && taken[at - 1]);
            if (!mark && !taken[at] && token.Lower is not ("and" or "is" or "on"))
            {
                return false;
            }
            stop |= token.Is('.');
            label |= taken[at];
        }
        return label || !stop;
    }

    /// <summary>The two are the ends of a range: "10 to 12", "10-12", "between 10 and 12".</summary>
    public bool IsRange(Mention one, Mention other)
    {
        if (other.First - one.End != 1 || taken[one.End])
        {
            return false;
        }
        Token joint = tokens[one.End];
        bool between = joint.Is("and") && (tokens[one.First - 1].Is("between") || tokens[one.First - 2].Is("between"));
        return joint.Is('-') || between || Words.To.Contains(joint.Lower);
    }

    /// <summary>Nothing at all, or one word or mark that lists.</summary>
    public bool IsTight(Mention one, Mention other) => other.First - one.End <= 1 && IsListed(one, other);
}
