using System.Collections.Immutable;
using DxAssistant.Knowledge.Quantities;
using DxAssistant.Knowledge.Readings.Numbers;
using DxAssistant.Knowledge.Readings.Text;
using DxAssistant.Knowledge.Readings.Units;
using Table = DxAssistant.Knowledge.Quantities.Units;

namespace DxAssistant.Knowledge.Readings.Mentions;

/// <summary>Finds the numbers with their signs and units, and the meter words, in order.</summary>
internal sealed class MentionScanner(TokenList tokens, bool[] taken, ReadingContext context, Setting setting)
{
    public List<Mention> Scan()
    {
        var found = new List<Mention>();
        for (int at = 0; at < tokens.Count;)
        {
            int end = taken[at] ? at + 1 : Next(at, found);
            at = Math.Max(end, at + 1);
        }
        return found;
    }

    private int Next(int at, List<Mention> found)
    {
        if (MeterWords.At(tokens, at, context, setting) is { } word)
        {
            found.Add(word);
            return word.End;
        }
        if (NumberScanner.At(tokens, at) is not { } number)
        {
            return at + 1;
        }
        if (number.Values.IsEmpty)
        {
            return number.End;
        }
        int before = found.Count > 0 ? found[^1].End : 0;
        if (WithUnit(number, before) is { } mention)
        {
            found.Add(mention);
            return mention.End;
        }
        return number.End;
    }

    // Null when what follows says that the number counts something: 5 min, 20 ft.
    private Mention? WithUnit(NumberPhrase number, int before)
    {
        (Sign sign, int first) = Signs.Before(tokens, number.First, before);
        int ish = tokens[number.End].Is("ish") ? 1 : tokens[number.End].Is('-') && tokens[number.End + 1].Is("ish") ? 2
            : 0;
        bool plus = tokens[number.End].Is('+') && tokens[number.End + 1].IsWord
            && UnitScanner.At(tokens, number.End + 1, at => taken[at]) is not null;
        var mention = new Mention(first, number.End + (plus ? 1 : ish))
        {
            Number = number.First, Values = number.Values, Manner = number.Spoken, Sign = sign,
            Doubt = Homophones.Blur(tokens, number) || IsVague(number) || tokens[number.First].Smudged
                || NumberWords.IsPoint(tokens[number.First - 1].Lower) ? Doubt.Unsure : Doubt.None,
        };
        mention = Below(mention);
        UnitPhrase? phrase = UnitScanner.At(tokens, mention.End, at => taken[at]);
        bool quoted = tokens[number.First - 1].Is('"') && tokens[mention.End].Is('"');
        if (phrase is null || quoted)
        {
            return mention;
        }
        var units = Mercury(UnitChoice.Of(phrase, number.Values, context, setting), sign);
        return units.IsEmpty
            ? phrase.Entry.Use == UnitUse.Article ? mention : null
            : Below(mention with { End = phrase.End, Units = units, HasOwnUnit = true,
                SaysScale = units is [{ Kind: QuantityKind.Temperature }] });
    }

    // "a few hundred", "a couple of thousand"
    private bool IsVague(NumberPhrase number)
    {
        int at = number.First - (tokens[number.First - 1].Is("of") ? 2 : 1);
        return tokens[at].Lower is "few" or "couple" or "several" or "many";
    }

    // "-25 inHg" is below the air whichever way the gauge counts.
    private static ImmutableArray<Unit> Mercury(ImmutableArray<Unit> units, Sign sign) =>
        sign == Sign.Minus && units.Contains(Table.InchOfMercuryVacuum)
            && Unit.TryParse("inHg", QuantityKind.GaugePressure, out var gauge) ? [gauge] : units;

    // "5 below zero"
    private Mention Below(Mention mention)
    {
        Token below = tokens[mention.End];
        Token zero = tokens[mention.End + 1];
        bool minus = mention.Units.All(unit => unit.Kind == QuantityKind.Temperature) && below.Is("below")
            && (zero.Is("zero") || zero.Text == "0");
        return minus ? mention with { End = mention.End + 2, Sign = Sign.Minus } : mention;
    }
}
