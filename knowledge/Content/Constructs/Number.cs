using System.Globalization;

namespace DxAssistant.Knowledge.Content.Constructs;

/// <summary>Reads a plain number as pages write it: digits, a point, a sign, an exponent.</summary>
internal static class Number
{
    public static double? Read(string? text) =>
        double.TryParse(text?.Replace('−', '-'),
            NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingSign | NumberStyles.AllowExponent,
            CultureInfo.InvariantCulture,
            out double value) && double.IsFinite(value) ? value : null;
}
