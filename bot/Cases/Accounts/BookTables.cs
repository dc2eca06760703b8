using System.Collections.Immutable;
using System.Data.Common;
using DxAssistant.Cases.Sqlite;

namespace DxAssistant.Cases.Accounts;

/// <summary>
/// The tables of a book of accounts, in SQL that SQLite and PostgreSQL read alike; a connection for each statement.
/// </summary>
/// <exception cref="CaseFileException">From every method: the database cannot be used.</exception>
internal sealed class BookTables(Func<DbConnection> connect)
{
    public int Run(string sql, params (string Name, object? Value)[] values) =>
        Do(connection => Command(connection, sql, values).ExecuteNonQuery());

    /// <summary>Does all of it, or nothing.</summary>
    public void Whole(params (string Sql, (string Name, object? Value)[] Values)[] steps) => Do(connection =>
    {
        using var whole = connection.BeginTransaction();
        foreach (var (sql, values) in steps)
        {
            var command = Command(connection, sql, values);
            command.Transaction = whole;
            command.ExecuteNonQuery();
        }

        whole.Commit();
        return steps.Length;
    });

    public ImmutableArray<T> Rows<T>(string sql, Func<DbDataReader, T> read,
        params (string Name, object? Value)[] values) => Do(connection =>
    {
        using var rows = Command(connection, sql, values).ExecuteReader();
        var all = ImmutableArray.CreateBuilder<T>();
        while (rows.Read()) all.Add(read(rows));
        return all.ToImmutable();
    });

    private T Do<T>(Func<DbConnection, T> work)
    {
        using var connection = connect();
        try
        {
            connection.Open();
            return work(connection);
        }
        catch (Exception error) when (StoreTrouble.Is(error, connection, CancellationToken.None))
        {
            throw SqliteTrouble.Of("the book of accounts cannot be used", error);
        }
    }

    private static DbCommand Command(DbConnection connection, string sql, (string Name, object? Value)[] values)
    {
        var command = connection.CreateCommand();
        command.CommandText = sql;
        foreach (var (name, value) in values)
        {
            var parameter = command.CreateParameter();
            (parameter.ParameterName, parameter.Value) = (name, value ?? DBNull.Value);
            command.Parameters.Add(parameter);
        }

        return command;
    }
}
