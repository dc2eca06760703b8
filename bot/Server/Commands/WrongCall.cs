using System.CommandLine;
using System.Text.RegularExpressions;

namespace DxAssistant.Server.Commands;

/// <summary>Says what was wrong with a call in the words of this program.</summary>
internal static partial class WrongCall
{
    /// <summary>One line without its full stop.</summary>
    public static string Said(ParseResult call)
    {
        // A misspelt command lacks its command too; the misspelling is what is wrong.
        string[] said = [.. call.Errors.Select(error => error.Message)];
        string odd = call.UnmatchedTokens is [{ } token, ..]
            && !said.Any(line => Unlike().IsMatch(line) || line.Contains("Must be one of", StringComparison.Ordinal))
            ? $"there is no command or option {token} here" : said[0];
        string plain = Unlike()
            .Replace(odd,
                match =>
                    $"{match.Groups["given"].Value} is not {Sort(match.Groups["type"].Value)} for {match.Groups["of"].Value}");
        return Lines().Replace(plain, " ").Trim().TrimEnd('.');
    }

    private static string Sort(string type) => type.Contains("Int", StringComparison.Ordinal) ? "a whole number"
        : type.Contains("Double", StringComparison.Ordinal) || type.Contains("Decimal", StringComparison.Ordinal)
        ? "a number"
        : type.Contains("Boolean", StringComparison.Ordinal) ? "true or false" : "a fit value";

    [GeneratedRegex(@"^Cannot parse argument '(?<given>.*?)' (?:for (?:option|command|argument) '(?<of>.*?)' )?as expected type '(?<type>.*?)'\.?", RegexOptions.Singleline)]
    private static partial Regex Unlike();

    [GeneratedRegex(@"\s*[\r\n]\s*")]
    private static partial Regex Lines();
}
