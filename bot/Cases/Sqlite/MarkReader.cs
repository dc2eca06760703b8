using Microsoft.Data.Sqlite;

namespace DxAssistant.Cases.Sqlite;

/// <summary>Reads marks with a command that is prepared once: it is asked at every turn. One user at a time.</summary>
internal sealed class MarkReader : IDisposable
{
    private readonly SqliteConnection connection;
    private readonly PreparedCommand mark;

    public MarkReader(string source)
    {
        connection = new SqliteConnection(source);
        connection.Open();
        mark = new PreparedCommand(connection, LogReader.MarkOf, "$case");
    }

    public CaseMark Read(string caseId)
    {
        using var found = mark.Read(caseId);
        return LogReader.Mark(found);
    }

    public void Dispose()
    {
        mark.Dispose();
        connection.Dispose();
    }
}
