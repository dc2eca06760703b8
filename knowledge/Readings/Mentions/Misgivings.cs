using DxAssistant.Knowledge.Quantities;
using DxAssistant.Knowledge.Readings.Text;

namespace DxAssistant.Knowledge.Readings.Mentions;

/// <summary>Finds what speaks against a number: a question, a limit, a difference, the name of a thing.</summary>
internal sealed class Misgivings(TokenList tokens, bool[] taken, ReadingContext context, Setting setting)
{
    /// <summary>Why a mention cannot simply be taken; none if it can.</summary>
    public Doubt About(Mention mention)
    {
        if (mention.Doubt != Doubt.None)
        {
            return mention.Doubt;
        }
        bool asks = IsAsked(mention) || IsAdjective(mention) || IsRelative(mention);
        bool display = setting.SpeaksOfDisplay && context.Asked is null && mention.HasOwnUnit
            && tokens[mention.Number].IsWhole && tokens[mention.Number].Length == 1
            && mention.Units.Any(unit => unit.Kind is QuantityKind.Temperature or QuantityKind.Current);
        return asks || display ? Doubt.Unsure : IsLimit(mention) && !IsPlenty(mention) ? Doubt.Limit : Doubt.None;
    }

    // A question is short; a longer sentence says something.
    private const int QuestionReach = 8;

    // "46 ohms?", "is 10k good?"
    private bool IsAsked(Mention mention)
    {
        int end = mention.End;
        while (end < mention.End + QuestionReach && tokens[end].IsWord)
        {
            end++;
        }
        int start = mention.First;
        while (start > mention.First - QuestionReach && (tokens[start - 1].IsWord || tokens[start - 1].IsNumber))
        {
            start--;
        }
        return tokens[mention.End].Is('?') || (tokens[end].Is('?') && Words.Asking.Contains(tokens[start].Lower));
    }

    // "2 V low", "off by 2 V", "half of 10k", "10^6": a difference or a part, not what the meter showed.
    private bool IsRelative(Mention mention)
    {
        Token next = tokens[mention.End];
        Token before = tokens[mention.First - 1];
        bool change = Words.Change.Contains(next.Lower)
            && !mention.Units.Any(unit => unit.Kind == QuantityKind.Temperature);
        bool part = before.Is("of")
            && (tokens[mention.First - 2].Is('%') || Words.Parts.Contains(tokens[mention.First - 2].Lower));
        bool product = before.Is('^') || (tokens[mention.First - 2].IsNumber && (before.Is('*') || before.Is("x")));
        return mention.State == ReadingState.Number
            && ((IsFree(mention.End) && (Words.Relative.Contains(next.Lower) || change))
                || Words.RelativeBefore.Contains(before.Lower) || part || product);
    }

    // "used a 87V", "on my 10k one": what a thing is called, not what was read; "got a 10k" is read.
    private bool IsAdjective(Mention mention) => mention.HasOwnUnit && mention.State == ReadingState.Number
        && mention.First > 0 && !taken[mention.First - 1] && !tokens[mention.First - 1].Glued
            && tokens[mention.First - 1].Text is "a" or "an" or "the" or "my" or "your" or "our"
            && tokens[mention.Number].Kind != TokenKind.Fraction
        && !Words.Cue.Contains(tokens[mention.First - 2].Lower)
            && tokens[mention.First - 2].Lower is not ("at" or "have" or "has" or "of");

    private bool IsLimit(Mention mention)
    {
        Token before = tokens[mention.First - 1];
        Token next = tokens[mention.End];
        bool tolerance = tokens[mention.End + 1].Is("or") || tokens[mention.End + 1].Is('/')
            || tokens[mention.End + 1].Is('-');
        bool plus = (!tolerance && (next.Is('+') || next.Is("plus")))
            || (next.Is("or") && tokens[mention.End + 1].Lower is "more" or "less" or "better" or "higher" or "lower");
        return mention.State == ReadingState.Number
            && (Words.Limit.Contains(before.Lower) || before.IsOneOf("<>≤≥")
                || (before.Is('=') && tokens[mention.First - 2].IsOneOf("<>")) || plus
                || HasInnerPlus(mention));
    }

    // A tester shows "> 550 MΩ" when the insulation is better than it can measure. The highest minimum of IEEE 43 is
    // 100 MΩ and no winding has so much: from there up the limit itself gives the same verdict as all beyond it.
    private const double PlentyOhms = 100e6;

    private static readonly string[] Nays = ["not", "no", "never"];

    /// <summary>The mention says only that a resistance is larger than any that matters.</summary>
    private bool IsPlenty(Mention mention) =>
        mention is { HasOwnUnit: true, Sign: Sign.Plus, Units: [{ Kind: QuantityKind.Resistance } unit] }
        && context.Asks(QuantityKind.Resistance)
        && mention.Values.All(value => unit.ToSi(value) >= PlentyOhms) && IsAtLeast(mention);

    private bool IsAtLeast(Mention mention)
    {
        int first = mention.First;
        bool denied = Enumerable.Range(1, 3).Any(back => Nays.Contains(tokens[first - back].Lower));
        Token before = tokens[first - 1];
        bool more = before.Is("than")
            && tokens[first - 2].Lower is "more" or "greater" or "higher" or "better" or "larger" or "bigger";
        return !denied && (more || HasPlus(mention) || before.Is('>') || before.Is('≥')
            || (before.Is('=') && tokens[first - 2].Is('>'))
            || before.Lower is "over" or "above" or "exceeding" or "exceeds" or "beyond" or "past" or "least");
    }

    private bool HasPlus(Mention mention)
    {
        Token next = tokens[mention.End];
        return next.Is('+') || next.Is("plus") || HasInnerPlus(mention)
            || (next.Is("or") && tokens[mention.End + 1].Lower is "more" or "better" or "higher");
    }

    // "500+ MΩ"
    private bool HasInnerPlus(Mention mention) =>
        Enumerable.Range(mention.Number, mention.End - mention.Number).Any(at => tokens[at].Is('+'));

    // No label holds the token.
    private bool IsFree(int at) => at >= taken.Length || !taken[at];
}
