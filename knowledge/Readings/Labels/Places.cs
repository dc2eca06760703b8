using DxAssistant.Knowledge.Readings.Text;

namespace DxAssistant.Knowledge.Readings.Labels;

/// <summary>Recognises where in the system or the building something was read: suction, "room sensor", outdoor.</summary>
internal static class Places
{
    private static readonly string[] Parts =
        ["suction", "discharge", "liquid", "vapor", "vapour", "gas", "supply", "return", "coil", "pipe", "evaporator", "condenser", "defrost", "compressor", "fan", "bus"];

    private static readonly string[] Airs = ["room", "ambient", "indoor", "outdoor", "indoors", "outdoors", "inside", "outside", "here"];

    private static readonly string[] Sensors = ["sensor", "thermistor", "probe", "thermostat"];

    private static readonly string[] Dropped = ["line", "air", "temp", "temperature", "pressure", "side"];

    public static LabelMention? At(TokenList tokens, int first)
    {
        Token token = tokens[first];
        if (!token.IsWord)
        {
            return null;
        }
        bool side = token.Lower is "low" or "high" && tokens[first + 1].Is("side");
        bool head = token.Is("head") && (tokens[first + 1].IsNumber || tokens[first + 1].Is("pressure"));
        bool bus = token.Is("dc") && tokens[first + 1].Is("bus");
        bool air = Airs.Contains(token.Lower);
        return side ? Place(first, first + 2, token.Lower + " side", LabelKind.Place)
            : bus ? Place(first, first + 2, "DC bus", LabelKind.Place)
            : head || air || Parts.Contains(token.Lower) ? Extended(tokens, first, air)
            : null;
    }

    private static LabelMention Extended(TokenList tokens, int first, bool air)
    {
        Token next = tokens[first + 1];
        int end = Dropped.Contains(next.Lower) ? first + 2 : first + 1;
        bool sensor = Sensors.Contains(tokens[end].Lower);
        string text = sensor ? $"{tokens[first].Lower} {tokens[end].Lower}" : tokens[first].Lower;
        return Place(first, sensor ? end + 1 : end, text, air && !sensor ? LabelKind.Air : LabelKind.Place);
    }

    private static LabelMention Place(int first, int end, string text, LabelKind kind) => new(first, end, text, kind);
}
