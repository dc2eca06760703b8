using Microsoft.Data.Sqlite;

namespace DxAssistant.Cases.Sqlite;

/// <summary>A command that is prepared once and run with other values each time.</summary>
internal sealed class PreparedCommand : IDisposable
{
    private readonly SqliteCommand command;

    public PreparedCommand(SqliteConnection connection, string sql, params string[] names)
    {
        command = connection.CreateCommand();
        command.CommandText = sql;
        foreach (string name in names) command.Parameters.Add(new SqliteParameter(name, null));
        command.Prepare();
    }

    public void Run(params object?[] values) => Fill(values).ExecuteNonQuery();

    public object? Scalar(params object?[] values) => Fill(values).ExecuteScalar();

    public SqliteDataReader Read(params object?[] values) => Fill(values).ExecuteReader();

    public void Dispose() => command.Dispose();

    private SqliteCommand Fill(object?[] values)
    {
        for (int i = 0; i < values.Length; i++) command.Parameters[i].Value = values[i] ?? DBNull.Value;
        return command;
    }
}
