using System.Collections.Immutable;
using System.Text.Json;
using Microsoft.Data.Sqlite;

namespace DxAssistant.Cases.Sqlite;

/// <summary>Reads the list of cases.</summary>
internal static class CaseList
{
    // Where cases are named, they are looked up one by one: the plus keeps the order of all from being gone through.
    private const string Page =
        "SELECT id, title, opened_at, last_at, last_event FROM job WHERE title IS NOT NULL AND last_event < $before";
    private const string All = Page + " ORDER BY last_event DESC LIMIT $limit";
    private const string Among = Page
        + " AND id IN (SELECT value FROM json_each($among)) ORDER BY +last_event DESC LIMIT $limit";

    public static CasePage Read(SqliteConnection connection, CaseQuery query)
    {
        using var command = connection.CreateCommand();
        command.CommandText = query.Among is null ? All : Among;
        command.Parameters.AddWithValue("$before", query.Before ?? long.MaxValue);
        command.Parameters.AddWithValue("$limit", query.Limit + 1L);
        if (query.Among is { } among) command.Parameters.AddWithValue("$among", JsonSerializer.Serialize(among));
        using var rows = command.ExecuteReader();
        var read = ImmutableArray.CreateBuilder<(CaseLine, long)>();
        while (rows.Read())
        {
            read.Add(
                (new CaseLine(rows.GetString(0), rows.GetString(1), Time(rows, 2), Time(rows, 3)), rows.GetInt64(4)));
        }

        return CasePage.Of(read.ToImmutable(), query.Limit);
    }

    /// <summary>The names of all cases, in ordinal order; also of those whose entries somebody took away.</summary>
    public static ImmutableArray<string> Names(SqliteConnection connection)
    {
        using var command = connection.CreateCommand();
        command.CommandText =
            "SELECT case_id FROM event UNION SELECT case_id FROM turn UNION SELECT id FROM job ORDER BY case_id";
        using var rows = command.ExecuteReader();
        var names = ImmutableArray.CreateBuilder<string>();
        while (rows.Read()) names.Add(rows.GetString(0));
        return names.ToImmutable();
    }

    /// <summary>The names of the cases that name a serial number, in ordinal order.</summary>
    /// <param name="serial">Bare.</param>
    public static ImmutableArray<string> WithSerial(SqliteConnection connection, string serial)
    {
        using var command = connection.CreateCommand();
        command.CommandText = "SELECT case_id FROM unit_serial WHERE serial = $serial ORDER BY case_id";
        command.Parameters.AddWithValue("$serial", serial);
        using var rows = command.ExecuteReader();
        var names = ImmutableArray.CreateBuilder<string>();
        while (rows.Read()) names.Add(rows.GetString(0));
        return names.ToImmutable();
    }

    private static DateTimeOffset Time(SqliteDataReader row, int column) =>
        DateTimeOffset.FromUnixTimeMilliseconds(row.GetInt64(column));
}
