using DxAssistant.Knowledge.Quantities;
using DxAssistant.Knowledge.Readings.Text;
using DxAssistant.Knowledge.Readings.Units;
using Table = DxAssistant.Knowledge.Quantities.Units;

namespace DxAssistant.Knowledge.Readings.Mentions;

/// <summary>Recognises what a meter shows or does without a number: OL, open, infinite, short, a beep.</summary>
internal static class MeterWords
{
    private static readonly string[] Negations =
        ["not", "no", "isn't", "isnt", "never", "without", "didn't", "doesn't", "wasn't", "aren't", "nor", "neither",
            "don't", "ain't", "nothing"];

    // A measurement that cannot give more volts than this is a diode test, which shows OL one way.
    private const double DiodeTest = 5;

    /// <summary>The meter word that begins at a token; null if none does.</summary>
    public static Mention? At(TokenList tokens, int first, ReadingContext context, Setting setting)
    {
        (int openEnd, bool openIsPlain) = OpenWords.At(tokens, first, context, setting);
        (int shortEnd, bool shortIsPlain) = openEnd > first ? (first, false)
            : ShortWords.At(tokens, first, context, setting);
        bool open = openEnd > first;
        if ((!open && shortEnd <= first) || IsNegated(tokens, first))
        {
            return null;
        }
        bool diode = context is { Asked: QuantityKind.Voltage, Possible.Most: <= DiodeTest };
        bool resistance = diode || context.Asks(QuantityKind.Resistance)
            || (context.Asked is null && (open ? openIsPlain : shortIsPlain)) || setting.SpeaksOfResistance;
        Unit unit = context.DefaultUnit is { } shown && (diode || shown.Kind == QuantityKind.Resistance) ? shown
            : Table.Ohm;
        return new Mention(first, open ? openEnd : shortEnd)
        {
            State = open ? ReadingState.OpenCircuit : ReadingState.ShortCircuit,
            Units = [unit],
            HasOwnUnit = true,
            Doubt = !resistance ? Doubt.Unsure : Doubt.None,
        };
    }

    private static bool IsNegated(TokenList tokens, int first)
    {
        for (int at = first - 1; at >= first - 3 && at >= 0 && tokens[at].IsWord; at--)
        {
            if (Negations.Contains(tokens[at].Lower))
            {
                return true;
            }
        }
        return false;
    }
}
