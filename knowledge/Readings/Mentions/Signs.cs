using DxAssistant.Knowledge.Readings.Text;

namespace DxAssistant.Knowledge.Readings.Mentions;

/// <summary>Tells a minus from a dash.</summary>
internal static class Signs
{
    /// <summary>The sign before a number and the token where it begins.</summary>
    /// <param name="previousEnd">The end of the mention before, whose dash would part two values.</param>
    public static (Sign Sign, int First) Before(TokenList tokens, int number, int previousEnd)
    {
        int at = number - 1;
        Token before = tokens[at];
        if (at < 0 || at < previousEnd)
        {
            return (Sign.Plus, number);
        }
        if (before.Lower is "minus" or "negative" or "neg")
        {
            return (Sign.Minus, at);
        }
        bool partsValues = at == previousEnd && previousEnd > 0;
        return !before.Is('-') || partsValues ? (Sign.Plus, number)
            : IsMinus(tokens, number) ? (Sign.Minus, at)
            : (Sign.Unclear, number);
    }

    // "-5", "= -5", "(-5": a space or mark before the dash, none behind it. The minus sign itself is always one.
    private static bool IsMinus(TokenList tokens, int number)
    {
        Token dash = tokens[number - 1];
        bool sign = tokens.Message[dash.Start] == '\u2212';
        bool free = number - 1 == 0 || !dash.Glued || tokens[number - 2].Text is "=" or ":" or "(" or ",";
        return sign || (tokens[number].Glued && free);
    }
}
