using System.Collections.Immutable;
using Microsoft.Data.Sqlite;

namespace DxAssistant.Cases.Sqlite;

/// <summary>Reads the list of cases.</summary>
internal static class CaseList
{
    public static ImmutableArray<CaseLine> Read(SqliteConnection connection, int limit)
    {
        using var command = connection.CreateCommand();
        command.CommandText =
            "SELECT id, title, opened_at, last_at FROM job WHERE title IS NOT NULL ORDER BY last_event DESC LIMIT $limit";
        command.Parameters.AddWithValue("$limit", limit);
        using var rows = command.ExecuteReader();
        var cases = ImmutableArray.CreateBuilder<CaseLine>();
        while (rows.Read())
        {
            cases.Add(new CaseLine(rows.GetString(0), rows.GetString(1), Time(rows, 2), Time(rows, 3)));
        }

        return cases.ToImmutable();
    }

    /// <summary>The names of all cases, in ordinal order.</summary>
    public static ImmutableArray<string> Names(SqliteConnection connection)
    {
        using var command = connection.CreateCommand();
        command.CommandText = "SELECT DISTINCT case_id FROM event ORDER BY case_id";
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
