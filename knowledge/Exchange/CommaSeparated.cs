using System.Collections.Immutable;
using System.Text;

namespace DxAssistant.Knowledge.Exchange;

/// <summary>Comma-separated values as RFC 4180 has them: CRLF after each row, quotes where a field needs them.</summary>
internal static class CommaSeparated
{
    public static string Row(IEnumerable<string> fields) => string.Join(',', fields.Select(Quoted)) + "\r\n";

    /// <summary>The rows; LF alone ends a row, too, and empty lines are passed over.</summary>
    /// <exception cref="FormatException">A quote is not closed.</exception>
    public static IEnumerable<ImmutableArray<string>> Rows(string text)
    {
        List<string> fields = [];
        StringBuilder field = new();
        bool quoted = false;
        for (int at = 0; at < text.Length; at++)
        {
            char c = text[at];
            if (quoted && c == '"' && at + 1 < text.Length && text[at + 1] == '"') field.Append(text[at++]);
            else if (c == '"') quoted = !quoted;
            else if (quoted) field.Append(c);
            else if (c == ',') fields.Add(Taken(field));
            else if (c == '\n')
            {
                fields.Add(Taken(field));
                if (fields is not [""]) yield return [.. fields];
                fields.Clear();
            }
            else if (c != '\r') field.Append(c);
        }

        if (quoted) throw new FormatException("a quote is not closed");
        fields.Add(Taken(field));
        if (fields is not [""]) yield return [.. fields];
    }

    private static string Taken(StringBuilder field)
    {
        string taken = field.ToString();
        field.Clear();
        return taken;
    }

    private static string Quoted(string field) =>
        field.AsSpan().IndexOfAny("\",\r\n") < 0 ? field : $"\"{field.Replace("\"", "\"\"", StringComparison.Ordinal)}\"";
}
