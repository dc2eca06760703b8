using System.Collections.Immutable;
using System.Globalization;
using DxAssistant.Knowledge.Readings.Text;

namespace DxAssistant.Knowledge.Readings.Numbers;

/// <summary>What a number in digits can mean, with the separators of both sides of the ocean.</summary>
internal static class DigitNumber
{
    /// <summary>
    /// One meaning for most numbers; two for 1,200 and 1.200: first as a fraction, then as thousands; none for what is
    /// no
    /// number, such as the date 12.03.2024.
    /// </summary>
    public static ImmutableArray<double> Values(string text)
    {
        string digits = text.Replace("'", "", StringComparison.Ordinal).Replace(Folding.GroupSpace.ToString(), "",
            StringComparison.Ordinal);
        if (digits.Length != text.Length && !IsGrouped(text.Replace(Folding.GroupSpace, '\'').Split('.', ',')[0], '\''))
        {
            return [];
        }
        if (digits.Contains('e', StringComparison.OrdinalIgnoreCase))
        {
            return Plain(digits);
        }
        int points = digits.Count(c => c == '.');
        int commas = digits.Count(c => c == ',');
        return (points, commas) switch
        {
            (0, 0) => Plain(digits),
            (1, 0) => One(digits, '.', text.Length != digits.Length),
            (0, 1) => One(digits, ',', text.Length != digits.Length),
            (_, 0) => IsGrouped(digits, '.') ? Plain(Without(digits, '.')) : [],
            (0, _) => IsGrouped(digits, ',') ? Plain(Without(digits, ',')) : [],
            _ => Both(digits, points, commas),
        };
    }

    private static ImmutableArray<double> One(string digits, char separator, bool fractionOnly)
    {
        int at = digits.IndexOf(separator, StringComparison.Ordinal);
        var fraction = Plain(digits.Replace(separator, '.'));
        bool thousands = at is >= 1 and <= 3 && digits[0] != '0' && digits.Length - at == 4;
        return thousands && !fractionOnly ? [.. fraction, .. Plain(Without(digits, separator))] : fraction;
    }

    private static ImmutableArray<double> Both(string digits, int points, int commas)
    {
        char last = digits.LastIndexOf('.') > digits.LastIndexOf(',') ? '.' : ',';
        char other = last == '.' ? ',' : '.';
        int cut = digits.LastIndexOf(last);
        bool one = (last == '.' ? points : commas) == 1;
        return one && IsGrouped(digits[..cut], other)
            ? Plain(Without(digits[..cut], other) + "." + digits[(cut + 1)..]) : [];
    }

    private static bool IsGrouped(string digits, char separator)
    {
        string[] groups = digits.Split(separator);
        return groups[0].Length is >= 1 and <= 3 && groups[0][0] != '0'
            && groups.Skip(1).All(group => group.Length == 3);
    }

    private static string Without(string digits, char separator) =>
        digits.Replace(separator.ToString(), "", StringComparison.Ordinal);

    private static ImmutableArray<double> Plain(string digits) =>
        double.TryParse(digits, NumberStyles.AllowDecimalPoint | NumberStyles.AllowExponent,
            CultureInfo.InvariantCulture, out double value)
            && double.IsFinite(value) ? [value] : [];
}
