using System.Globalization;

namespace DxAssistant.Conversation.Speaking;

/// <summary>
/// How many times more or less, as it is said: one place below ten, whole above, and no more than is worth words.
/// </summary>
internal static class TimesSlot
{
    private const double Most = 1000;

    /// <param name="times">
    /// 1 or more; rounded before it is compared or shown, for logarithms may differ in their last bits between systems.
    /// </param>
    public static Slot Of(double times)
    {
        double rounded = Math.Round(times, 9);
        return rounded > Most
            ? new Slot("times", string.Create(CultureInfo.InvariantCulture, $"> {Most:0}"), [])
            : new Slot("times", rounded.ToString(rounded < 10 ? "0.0" : "0", CultureInfo.InvariantCulture), []);
    }
}
