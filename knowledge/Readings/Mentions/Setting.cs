using DxAssistant.Knowledge.Readings.Text;

namespace DxAssistant.Knowledge.Readings.Mentions;

/// <summary>What a message speaks of, as far as that decides what its short words mean.</summary>
/// <param name="SpeaksOfResistance">Of a sensor, a winding, ohms.</param>
/// <param name="SpeaksOfPressure">Of suction, head, gauges.</param>
/// <param name="SpeaksOfDisplay">Of a display or a code on it.</param>
internal sealed record Setting(bool SpeaksOfResistance, bool SpeaksOfPressure, bool SpeaksOfDisplay)
{
    public static Setting Of(TokenList tokens)
    {
        bool resistance = false;
        bool pressure = false;
        bool display = false;
        for (int at = 0; at < tokens.Count; at++)
        {
            string word = tokens[at].Lower;
            resistance |= Words.Resistive.Contains(word);
            pressure |= Words.Pressing.Contains(word);
            display |= Words.Display.Contains(word);
        }
        return new Setting(resistance, pressure, display);
    }
}
