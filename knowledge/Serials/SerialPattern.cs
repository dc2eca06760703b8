using System.Text;
using System.Text.RegularExpressions;

namespace DxAssistant.Knowledge.Serials;

/// <summary>How the serial numbers of one series look.</summary>
public sealed class SerialPattern
{
    // What is mistaken for each other on a nameplate: a digit, and the letters that look like it.
    private const string LookAlikes = "0OQ 1IL 2Z 5S 6G 8B";

    private readonly Regex form;

    private SerialPattern(Regex form, string example) => (this.form, Example) = (form, example);

    /// <summary>A serial number that fits.</summary>
    public string Example { get; }

    /// <param name="form">A regular expression for the whole number.</param>
    /// <param name="example">A number that fits.</param>
    /// <returns>Null when the form is no regular expression.</returns>
    public static SerialPattern? TryMake(string form, string example)
    {
        try
        {
            return new SerialPattern(
                new Regex($@"\A(?:{form})\z", RegexOptions.NonBacktracking | RegexOptions.CultureInvariant), example);
        }
        catch (Exception bad) when (bad is ArgumentException or NotSupportedException)
        {
            return null;
        }
    }

    /// <summary>A number as it is written on the plate; null when it does not fit.</summary>
    /// <remarks>Capitals, blanks and dashes are no part of what a person knows of a number.</remarks>
    public string? Read(string typed)
    {
        string bare = Bare(typed);
        string dashed = Dashed(bare);
        return form.IsMatch(dashed) ? dashed : form.IsMatch(bare) ? bare : null;
    }

    /// <summary>
    /// The number that was likely meant, where letters and digits that look alike were mixed up; else null.
    /// </summary>
    public string? Guess(string typed)
    {
        string bare = Bare(typed), example = Bare(Example);
        if (bare.Length != example.Length) return null;
        var meant = new StringBuilder(bare);
        for (int at = 0; at < meant.Length; at++) meant[at] = Like(meant[at], example[at]);
        return Read(meant.ToString());
    }

    /// <summary>
    /// Letters and digits of a number, capital; two numbers that differ in nothing else are the same.
    /// </summary>
    public static string Bare(string number)
    {
        var bare = new StringBuilder(number.Length);
        foreach (char sign in number)
            if (char.IsAsciiLetterOrDigit(sign)) bare.Append(char.ToUpperInvariant(sign));
        return bare.ToString();
    }

    // The same sign, or one that looks like it and is of the sort the example has there.
    private static char Like(char typed, char shown)
    {
        if (char.IsAsciiDigit(typed) == char.IsAsciiDigit(shown)) return typed;
        string? alike = LookAlikes.Split(' ').FirstOrDefault(group => group.Contains(typed, StringComparison.Ordinal));
        if (alike is null) return typed;
        return char.IsAsciiDigit(shown) ? alike[0] : alike.Contains(shown, StringComparison.Ordinal) ? shown : alike[1];
    }

    private string Dashed(string bare)
    {
        var dashed = new StringBuilder();
        int next = 0;
        foreach (char sign in Example)
        {
            if (!char.IsAsciiLetterOrDigit(sign)) dashed.Append(sign);
            else if (next < bare.Length) dashed.Append(bare[next++]);
        }

        return dashed.Append(bare, next, bare.Length - next).ToString();
    }
}
