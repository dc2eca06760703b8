using System.Collections.Immutable;
using DxAssistant.Cases.WorkList;
using Microsoft.Data.Sqlite;

namespace DxAssistant.Cases.Sqlite;

/// <summary>How the words of a search are looked up: the way that costs least for how common they are.</summary>
/// <remarks>
/// Words may stand in different turns, so each is looked up by itself. A rare word gives few cases, and what they have
/// of the common ones is soon found. Of common words alone half of all cases would have to be looked up and sorted:
/// there the list is gone through in its order until the page is full, which is what the plus before a column asks for
/// (https://sqlite.org/optoverview.html, 'disqualifying WHERE clause terms using unary "+"').
/// </remarks>
internal sealed class WorkMatch
{
    /// <summary>So many entries are looked up and sorted.</summary>
    public const int Few = 1_000;

    /// <summary>A word of more entries is common.</summary>
    public const int Many = 10_000;

    private const string Found = "SELECT rowid >> 16 FROM work_text WHERE work_text MATCH ";

    // Rarest first.
    private readonly ImmutableArray<string> wanted;
    private readonly long least;
    private readonly int few;
    private readonly int many;

    private WorkMatch(ImmutableArray<string> wanted, long least, int few, int many) =>
        (this.wanted, this.least, this.few, this.many) = (wanted, least, few, many);

    /// <param name="text">What is searched for.</param>
    public static WorkMatch Of(SqliteConnection connection, string text, int few = Few, int many = Many)
    {
        var counted = WorkWords.Terms(text).Select(Wanted)
            .Select(word => (Word: word, Count: Count(connection, word, many + 1L)))
            .OrderBy(found => found.Count).ThenBy(found => found.Word, StringComparer.Ordinal).ToImmutableArray();
        return new WorkMatch([.. counted.Select(found => found.Word)], counted.IsEmpty ? 0 : counted[0].Count, few,
            many);
    }

    /// <summary>
    /// The condition, beginning with AND. A case in which nothing was said yet is found by what was written down beside
    /// it, and else left out.
    /// </summary>
    public string Condition(SqliteCommand command)
    {
        string[] each = [.. wanted.Select((word, i) => Found
            + command.Parameters.AddWithValue(FormattableString.Invariant($"$word{i}"), word).ParameterName)];
        if (each.Length == 0) return " AND title IS NOT NULL";
        return least <= many
            ? $" AND {(least <= few ? "" : "+")}number IN ({string.Join(" INTERSECT ", each)})"
            : string.Concat(each.Select(one => $" AND +number IN ({one})"));
    }

    // In quotes nothing in it is a command.
    private static string Wanted(string term) => $"\"{term}\"{(term.Length > 1 ? "*" : "")}";

    private static long Count(SqliteConnection connection, string word, long most)
    {
        using var command = connection.CreateCommand();
        command.CommandText = "SELECT count(*) FROM (SELECT 1 FROM work_text WHERE work_text MATCH $word LIMIT $most)";
        command.Parameters.AddWithValue("$word", word);
        command.Parameters.AddWithValue("$most", most);
        return (long)command.ExecuteScalar()!;
    }
}
