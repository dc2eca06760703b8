using System.Collections.Immutable;
using System.Globalization;
using DxAssistant.Cases.WorkList;
using DxAssistant.Conversation.Events;
using Npgsql;

namespace DxAssistant.Cases.Postgres;

/// <summary>
/// The work list in PostgreSQL: columns of the line that a case has anyway, and the words of each turn.
/// </summary>
/// <remarks>
/// Words are cut by this program, not by the database, so that both stores find the same. Kept in step inside the
/// transaction that appends.
/// </remarks>
internal static class PostgresWork
{
    // A lexeme has at most 2,046 bytes; nobody types the end of a longer word.
    private const int LongestWord = 500;

    private const string Columns =
        "SELECT id, title, series, fault, ended, opened_at, last_at, last_event FROM job WHERE ";

    private const string SetLine = """
        UPDATE job SET series = coalesce($2, series), fault = coalesce($3, fault), ended = CASE WHEN $5 THEN ended ELSE $4 END
        WHERE id = $1
        """;

    // A word is in the index once a case: "done" stands in every turn, and would be gone through for every turn of all
    // cases.
    private const string AddWords = """
        INSERT INTO work_text SELECT $1, $2, array_to_tsvector(fresh) FROM (SELECT array(
            SELECT unnest($3::text[]) EXCEPT SELECT unnest(tsvector_to_array(words)) FROM work_text WHERE case_id = $1) AS fresh) AS turn
        WHERE cardinality(fresh) > 0
        """;

    /// <summary>Adds one turn.</summary>
    /// <param name="first">The sequence number of its first entry.</param>
    public static async Task AddAsync(PostgresLog log, string caseId, long first, ImmutableArray<CaseEvent> events)
    {
        var facts = WorkFacts.Of(events);
        await log.RunAsync(SetLine, caseId, facts.Series, facts.Fault, facts.Ended, facts.IsAside);
        string[] words = [.. WorkWords.Split(facts.Words).Where(word => word.Length <= LongestWord)
            .Distinct(StringComparer.Ordinal)];
        if (words.Length > 0) await log.RunAsync(AddWords, caseId, first, words);
    }

    /// <summary>Adds all turns of a case anew.</summary>
    public static async Task FillAsync(PostgresLog log, string caseId, ImmutableArray<StoredEvent> events)
    {
        await log.RunAsync("DELETE FROM work_text WHERE case_id = $1", caseId);
        foreach (var turn in events.GroupBy(stored => stored.TurnId, StringComparer.Ordinal))
            await AddAsync(log, caseId, turn.First().Sequence, [.. turn.Select(stored => stored.Event)]);
    }

    /// <summary>Fills the list of a database from before there was one.</summary>
    public static async Task FillAllAsync(NpgsqlConnection connection, CancellationToken cancel)
    {
        var log = new PostgresLog(connection, cancel);
        foreach (string caseId in await log.NamesAsync())
        {
            // A case that cannot be read is not in the list, and no reason to leave all others out.
            try
            {
                await FillAsync(log, caseId, (await log.ReadAsync(caseId)).Open(caseId));
            }
            catch (CaseFileException)
            {
            }
        }
    }

    /// <summary>The search of a part of the list as SQL, with its values in order.</summary>
    /// <param name="limit">How many at most.</param>
    public static (string Sql, object?[] Values) Search(WorkQuery query, WorkPart part, long limit)
    {
        var values = new List<object?> { limit };
        string Next(object value)
        {
            values.Add(value);
            return FormattableString.Invariant($"${values.Count}");
        }

        // Words may stand in different turns, so each is looked up by itself. A case in which nothing was said yet is
        // found by what was written down beside it, and else left out.
        var terms = WorkWords.Terms(query.Text);
        string sql = Columns + string.Format(CultureInfo.InvariantCulture, part.Where, [.. part.Values.Select(Next)])
            + (terms.IsEmpty ? " AND title IS NOT NULL" : string.Concat(terms.Select(term =>
                $" AND id IN (SELECT case_id FROM work_text WHERE words @@ CAST({Next(Wanted(term))} AS tsquery))")))
            + (query.Series is null ? "" : $" AND series = {Next(query.Series)}")
            + (query.Fault is null ? "" : $" AND fault = {Next(query.Fault)}")
            + (query.Open switch { true => " AND ended IS NULL", false => " AND ended IS NOT NULL", null => "" })
            + $" ORDER BY {part.Order} LIMIT $1";
        return (sql, [.. values]);
    }

    // A word of letters and digits alone; in quotes nothing in it is a command.
    private static string Wanted(string term) => term.Length > 1 ? $"'{term}':*" : $"'{term}'";
}
