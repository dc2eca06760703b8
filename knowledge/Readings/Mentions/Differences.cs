using DxAssistant.Knowledge.Quantities;
using DxAssistant.Knowledge.Readings.Text;
using DxAssistant.Knowledge.Readings.Units;

namespace DxAssistant.Knowledge.Readings.Mentions;

/// <summary>Takes degrees for a temperature difference where superheat, a split or a drop is spoken of.</summary>
internal static class Differences
{
    private const int Reach = 4;

    private static readonly ReadingContext Difference = ReadingContext.For(QuantityKind.TemperatureDifference);

    public static void Mark(List<Mention> mentions, TokenList tokens, ReadingContext context)
    {
        for (int i = 0; i < mentions.Count; i++)
        {
            Mention mention = mentions[i];
            bool degrees = mention.IsBare ? context.Asked is null
                : mention.Units.All(unit => unit.Kind == QuantityKind.Temperature);
            if (mention.State == ReadingState.Number && degrees
                && IsSpokenOf(mention, tokens, i > 0 ? mentions[i - 1].End : 0))
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

    private static bool IsSpokenOf(Mention mention, TokenList tokens, int from)
    {
        for (int at = mention.First - 1; at >= Math.Max(from, mention.First - Reach); at--)
        {
            if (tokens[at].IsOneOf(",;.\n"))
            {
                break;
            }
            if (Words.Difference.Contains(tokens[at].Lower))
            {
                return true;
            }
        }
        bool belongsToNext = tokens[mention.End + 1].IsNumber || tokens[mention.End + 1].Lower is "is" or "of" or "was";
        return (Words.Difference.Contains(tokens[mention.End].Lower) && !belongsToNext)
            || (tokens[mention.End].Is("of") && Words.Difference.Contains(tokens[mention.End + 1].Lower));
    }
}
