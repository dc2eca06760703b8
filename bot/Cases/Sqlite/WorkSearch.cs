using System.Collections.Immutable;
using System.Globalization;
using DxAssistant.Cases.WorkList;
using Microsoft.Data.Sqlite;

namespace DxAssistant.Cases.Sqlite;

/// <summary>Searches the work list.</summary>
internal static class WorkSearch
{
    private const string Columns =
        "SELECT case_id, title, series, fault, ended, opened_at, last_at, last_event FROM work WHERE ";

    public static WorkPage Read(SqliteConnection connection, WorkQuery query) =>
        Read(connection, query, WorkMatch.Of(connection, query.Text));

    /// <param name="match">How the words of the query are looked up.</param>
    public static WorkPage Read(SqliteConnection connection, WorkQuery query, WorkMatch match)
    {
        var read = ImmutableArray.CreateBuilder<(WorkLine, long)>();
        foreach (var part in WorkPart.Of(query.Order, query.After))
            if (read.Count <= query.Limit) Read(connection, query, match, part, read);
        return WorkPage.Of(read.ToImmutable(), query);
    }

    private static void Read(
        SqliteConnection connection, WorkQuery query, WorkMatch match, WorkPart part,
        ImmutableArray<(WorkLine, long)>.Builder read)
    {
        using var command = connection.CreateCommand();
        string[] names = [.. part.Values.Select((value, i) =>
            command.Parameters.AddWithValue(FormattableString.Invariant($"$part{i}"), value).ParameterName)];
        command.CommandText = Columns + string.Format(CultureInfo.InvariantCulture, part.Where, names)
            + match.Condition(command)
            + Filters(command, query) + $" ORDER BY {part.Order} LIMIT $limit";
        command.Parameters.AddWithValue("$limit", query.Limit + 1L - read.Count);
        using var rows = command.ExecuteReader();
        while (rows.Read())
        {
            read.Add((new WorkLine(
                rows.GetString(0), Text(rows, 1) ?? "", Text(rows, 2), Text(rows, 3), Text(rows, 4), Time(rows, 5),
                Time(rows, 6)), rows.GetInt64(7)));
        }
    }

    private static string Filters(SqliteCommand command, WorkQuery query)
    {
        command.Parameters.AddWithValue("$series", (object?)query.Series ?? DBNull.Value);
        command.Parameters.AddWithValue("$fault", (object?)query.Fault ?? DBNull.Value);
        return (query.Series is null ? "" : " AND series = $series")
            + (query.Fault is null ? "" : " AND fault = $fault")
            + (query.Open switch { true => " AND ended IS NULL", false => " AND ended IS NOT NULL", null => "" });
    }

    private static string? Text(SqliteDataReader row, int column) =>
        row.IsDBNull(column) ? null : row.GetString(column);

    private static DateTimeOffset Time(SqliteDataReader row, int column) =>
        DateTimeOffset.FromUnixTimeMilliseconds(row.GetInt64(column));
}
