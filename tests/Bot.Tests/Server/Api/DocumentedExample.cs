using System.Collections.Immutable;
using System.Text.Json;
using System.Text.RegularExpressions;

namespace DxAssistant.Bot.Tests.Server.Api;

/// <summary>
/// One example of the API's page: a request, and what is answered. Braces take up and give back parts of answers; an
/// ellipsis stands for anything.
/// </summary>
internal sealed partial record DocumentedExample(
    string Method, string Path, ImmutableArray<(string Name, string Value)> Headers, string Body,
    int Status, ImmutableArray<(string Name, string Value)> AnswerHeaders, string AnswerBody)
{
    /// <summary>All examples of a page, in order.</summary>
    public static ImmutableArray<DocumentedExample> In(string page) =>
        [.. Fences().Matches(page).Select(fence => Of(fence.Groups[1].Value.Trim('\n').Split('\n')))];

    /// <summary>A text with what was taken up put in.</summary>
    public static string Fill(string text, Dictionary<string, string> known) =>
        known.Aggregate(text, (filled, one) => filled.Replace($"{{{one.Key}}}", one.Value, StringComparison.Ordinal));

    /// <summary>Compares a text of an answer with the one on the page, and takes up its parts.</summary>
    public static void Compare(string shown, string answered, Dictionary<string, string> known)
    {
        string filled = Fill(shown, known);
        string pattern = "^" + Braces()
            .Replace(Regex.Escape(filled).Replace("…", ".*", StringComparison.Ordinal), "(?<$1>.+?)") + "$";
        var match = Regex.Match(answered, pattern);
        Assert.True(match.Success, $"{answered} is not {filled}");
        foreach (string name in match.Groups.Keys.Where(key => !char.IsAsciiDigit(key[0])))
            known[name] = match.Groups[name].Value;
    }

    /// <summary>Whether an answer says all that the page shows of it; it may say more.</summary>
    public static void Compare(JsonElement shown, JsonElement answered, Dictionary<string, string> known)
    {
        if (shown.ValueKind == JsonValueKind.String) Compare(shown.GetString()!, answered.ToString(), known);
        else if (shown.ValueKind == JsonValueKind.Object)
            foreach (var member in shown.EnumerateObject())
                Compare(member.Value, answered.GetProperty(member.Name), known);
        else if (shown.ValueKind == JsonValueKind.Array && shown.GetArrayLength() > 0)
            foreach (var (one, at) in shown.EnumerateArray()
                .Select((one, at) => (one, at))) Compare(one, answered[at], known);
        else Assert.Equal(shown.ToString(), answered.ToString());
    }

    private static DocumentedExample Of(string[] lines)
    {
        int middle = Array.FindIndex(lines, line => line.Length == 3 && line.All(char.IsAsciiDigit));
        string[] first = lines[0].Split(' ', 2);
        var (headers, body) = Parts(lines[1..middle]);
        var (answerHeaders, answerBody) = Parts(lines[(middle + 1)..]);
        return new DocumentedExample(first[0], first[1], headers, body,
            int.Parse(lines[middle], System.Globalization.CultureInfo.InvariantCulture), answerHeaders, answerBody);
    }

    private static (ImmutableArray<(string, string)> Headers, string Body) Parts(string[] lines)
    {
        var headers = lines.TakeWhile(line => HeaderLine().IsMatch(line)).ToList();
        return ([.. headers.Select(line => (line[..line.IndexOf(':', StringComparison.Ordinal)],
            line[(line.IndexOf(':', StringComparison.Ordinal) + 1)..].Trim()))],
            string.Join('\n', lines.Skip(headers.Count)).Trim());
    }

    [GeneratedRegex("^```http\n(.*?)^```", RegexOptions.Singleline | RegexOptions.Multiline)]
    private static partial Regex Fences();

    [GeneratedRegex("^[A-Za-z-]+: ")]
    private static partial Regex HeaderLine();

    [GeneratedRegex(@"\\\{([a-z]+)\}")]
    private static partial Regex Braces();
}
