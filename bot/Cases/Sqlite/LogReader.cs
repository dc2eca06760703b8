using System.Collections.Immutable;
using System.Globalization;
using DxAssistant.Cases.Log;
using Microsoft.Data.Sqlite;

namespace DxAssistant.Cases.Sqlite;

/// <summary>Reads rows of a log back.</summary>
internal static class LogReader
{
    /// <summary>The mark of <c>$case</c>, as <see cref="Mark"/> reads it.</summary>
    public const string MarkOf = """
        SELECT sequence, hash, coalesce((SELECT last_event FROM blanked WHERE case_id = $case), 0)
        FROM event WHERE case_id = $case ORDER BY sequence DESC LIMIT 1
        """;

    /// <summary>A whole case.</summary>
    /// <exception cref="CaseFileException">A row has another form than this program gives it.</exception>
    public static KeptLog Read(SqliteConnection connection, string caseId) =>
        new(Rows(connection, caseId), Last(connection, caseId));

    /// <summary>The rows of a case from one sequence number to another, both included.</summary>
    /// <exception cref="CaseFileException">A row has another form than this program gives it.</exception>
    public static ImmutableArray<LogRow> Rows(
        SqliteConnection connection, string caseId, long first = 1, long last = long.MaxValue)
    {
        using var command = connection.CreateCommand();
        command.CommandText =
            "SELECT sequence, turn_id, at, body, aside, hash FROM event WHERE case_id = $case AND sequence BETWEEN "
                + "$first AND $last ORDER BY sequence";
        command.Parameters.AddWithValue("$case", caseId);
        command.Parameters.AddWithValue("$first", first);
        command.Parameters.AddWithValue("$last", last);
        using var rows = command.ExecuteReader();
        var log = ImmutableArray.CreateBuilder<LogRow>();
        while (rows.Read()) log.Add(Row(rows, caseId));
        return log.ToImmutable();
    }

    /// <inheritdoc cref="ICaseStore.MarkAsync"/>
    public static CaseMark Mark(SqliteDataReader found) =>
        found.Read() ? new CaseMark(found.GetInt64(0), found.GetString(1), found.GetInt64(2)) : CaseMark.None;

    /// <summary>The last sequence number of a case; 0 when there is no such case.</summary>
    public static long Last(SqliteConnection connection, string caseId)
    {
        using var command = connection.CreateCommand();
        command.CommandText = "SELECT coalesce(max(last), 0) FROM turn WHERE case_id = $case";
        command.Parameters.AddWithValue("$case", caseId);
        return Convert.ToInt64(command.ExecuteScalar(), CultureInfo.InvariantCulture);
    }

    private static LogRow Row(SqliteDataReader row, string caseId)
    {
        long sequence = row.GetInt64(0);
        try
        {
            return new LogRow(
                sequence, row.GetString(1), DateTimeOffset.FromUnixTimeMilliseconds(row.GetInt64(2)),
                row.GetString(3), row.IsDBNull(4) ? null : row.GetString(4), row.GetString(5));
        }
        catch (Exception error) when (error is InvalidOperationException or InvalidCastException
            or ArgumentOutOfRangeException)
        {
            throw Chain.Altered(caseId, sequence, error.Message);
        }
    }
}
