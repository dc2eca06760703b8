using System.Collections.Frozen;
using DxAssistant.Knowledge.Quantities;
using DxAssistant.Knowledge.Readings.Text;
using DxAssistant.Knowledge.Readings.Units;
using Table = DxAssistant.Knowledge.Quantities.Units;

namespace DxAssistant.Knowledge.Readings.Mentions;

/// <summary>Takes degrees for a temperature difference where superheat, a split or a drop is spoken of.</summary>
internal static class Differences
{
    private const int Reach = 4;

    private static readonly ReadingContext Difference = ReadingContext.For(QuantityKind.TemperatureDifference);

    /// <summary>
    /// A K by the name of a superheat is kelvins: said before anything is put on a line, so that it lands on none of
    /// ohms.
    /// </summary>
    public static void MarkKelvins(List<Mention> mentions, TokenList tokens, ReadingContext context)
    {
        for (int i = 0; i < mentions.Count; i++)
        {
            if (IsInKelvins(mentions[i], tokens, i > 0 ? mentions[i - 1].End : 0, context))
            {
                mentions[i] = mentions[i] with { Units = [Table.Kelvin] };
            }
        }
    }

    public static void Mark(List<Mention> mentions, TokenList tokens, ReadingContext context)
    {
        for (int i = 0; i < mentions.Count; i++)
        {
            Mention mention = mentions[i];
            bool degrees = mention.IsBare ? context.Asked is null
                : mention.Units.All(unit => unit.Kind == QuantityKind.Temperature);
            int from = i > 0 ? mentions[i - 1].End : 0;
            if (mention.State == ReadingState.Number && degrees && IsSpokenOf(mention, tokens, from, Words.Difference))
            {
                mentions[i] = mention with
                {
                    Units = mention.IsBare || mention.Units.Length == 2
                        ? DefaultUnits.Of(Difference with { Market = context.Market })
                        : UnitChoice.OfKind(mention.Units, Difference),
                };
            }
        }
    }

    // "Superheat 18K": whatever was asked, no superheat is in kilohms. A drop may be one of a resistance.
    private static bool IsInKelvins(Mention mention, TokenList tokens, int from, ReadingContext context) =>
        mention is { State: ReadingState.Number, HasOwnUnit: true } && tokens[mention.End - 1].Is("k")
            && (IsSpokenOf(mention, tokens, from, Words.Superheat)
                || (!context.Asks(QuantityKind.Resistance) && IsSpokenOf(mention, tokens, from, Words.Difference)));

    private static bool IsSpokenOf(Mention mention, TokenList tokens, int from, FrozenSet<string> names)
    {
        for (int at = mention.First - 1; at >= Math.Max(from, mention.First - Reach); at--)
        {
            if (tokens[at].IsOneOf(",;.\n"))
            {
                break;
            }
            if (names.Contains(tokens[at].Lower))
            {
                return true;
            }
        }
        bool belongsToNext = tokens[mention.End + 1].IsNumber || tokens[mention.End + 1].Lower is "is" or "of" or "was";
        return (names.Contains(tokens[mention.End].Lower) && !belongsToNext)
            || (tokens[mention.End].Is("of") && names.Contains(tokens[mention.End + 1].Lower));
    }
}
