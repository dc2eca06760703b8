namespace DxAssistant.Knowledge.Readings.Text;

/// <summary>Makes one character of the many that keyboards and phones give for the same sign.</summary>
internal static class Folding
{
    /// <summary>A space that only ever parts thousands.</summary>
    public const char GroupSpace = '\u2009';

    public static char Fold(char c) => c switch
    {
        '\u2212' or '\u2010' or '\u2011' or '\u2012' or '\u2013' or '\u2014' or '\u2015' or '\uFE63' => '-',
        '\u2126' or '\u03C9' => 'Ω',
        '\u03BC' => 'µ',
        '\u00BA' or '\u02DA' or '\u2218' => '°',
        '\u2018' or '\u2019' or '\u2032' or '\u02BC' => '\'',
        '\u201C' or '\u201D' or '\u2033' => '"',
        '\u202F' or '\u2009' => GroupSpace,
        '\u00A0' => ' ',
        '\u2022' or '\u00B7' => '*',
        '\u2044' or '\u2215' => '/',
        // Full width forms of the ASCII signs, letters and digits.
        > '\uFF00' and < '\uFF5F' => (char)(c - '\uFF01' + '!'),
        '\u3000' => ' ',
        '\u00D7' => 'x',
        _ => c,
    };

    /// <summary>The value of a fraction written in one character; NaN for any other.</summary>
    public static double Fraction(char c) => c switch
    {
        '½' => 0.5, '¼' => 0.25, '¾' => 0.75, '⅓' => 1.0 / 3, '⅔' => 2.0 / 3,
        '⅛' => 0.125, '⅜' => 0.375, '⅝' => 0.625, '⅞' => 0.875,
        _ => double.NaN,
    };
}
