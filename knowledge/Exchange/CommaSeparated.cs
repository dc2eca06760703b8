using System.Collections.Immutable;
using System.Text;

namespace DxAssistant.Knowledge.Exchange;

/// <summary>
/// Comma-separated values as RFC 4180 has them: CRLF after each row, quotes where a field needs them.
/// </summary>
internal static class CommaSeparated
{
    // What may part fields; the first is taken when none is met.
    private const string Marks = ",;\t";

    public static string Row(IEnumerable<string> fields) => string.Join(',', fields.Select(Quoted)) + "\r\n";

    /// <summary>
    /// The rows. LF or CR alone ends a row, too; rows without a word in any field are passed over; where the heads
    /// hold semicolons or tabs and no commas, those part the fields.
    /// </summary>
    /// <remarks>A quote that does not begin its field stands for itself.</remarks>
    /// <exception cref="FormatException">A quote is not closed.</exception>
    public static IEnumerable<ImmutableArray<string>> Rows(string text)
    {
        char mark = MarkOf(text);
        List<string> fields = [];
        StringBuilder field = new();
        bool quoted = false;
        for (int at = 0; at < text.Length; at++)
        {
            char c = text[at];
            if (quoted && c == '"' && at + 1 < text.Length && text[at + 1] == '"') field.Append(text[at++]);
            else if (c == '"' && (quoted || field.Length == 0)) quoted = !quoted;
            else if (quoted) field.Append(c);
            else if (c == mark) fields.Add(Taken(field));
            else if (c is not ('\n' or '\r')) field.Append(c);
            else if (Ended(fields, field) is { } row) yield return row;
        }

        if (quoted) throw new FormatException("a quote is not closed");
        if (Ended(fields, field) is { } last) yield return last;
    }

    /// <summary>What parts the fields: the mark met most often in the first row, outside quotes.</summary>
    public static char MarkOf(string text)
    {
        int[] met = new int[Marks.Length];
        bool quoted = false;
        foreach (char c in text.TrimStart('\r', '\n'))
        {
            if (c == '"') quoted = !quoted;
            else if (!quoted && c is '\n' or '\r') break;
            else if (!quoted && Marks.IndexOf(c, StringComparison.Ordinal) is >= 0 and int mark) met[mark]++;
        }

        return Marks[Array.IndexOf(met, met.Max())];
    }

    private static ImmutableArray<string>? Ended(List<string> fields, StringBuilder field)
    {
        fields.Add(Taken(field));
        ImmutableArray<string>? row = fields.All(string.IsNullOrWhiteSpace) ? null : [.. fields];
        fields.Clear();
        return row;
    }

    private static string Taken(StringBuilder field)
    {
        string taken = field.ToString();
        field.Clear();
        return taken;
    }

    private static string Quoted(string field) =>
        field.AsSpan().IndexOfAny("\",\r\n") < 0
            ? field
            : $"\"{field.Replace("\"", "\"\"", StringComparison.Ordinal)}\"";
}
