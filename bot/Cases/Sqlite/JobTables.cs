using Microsoft.Data.Sqlite;

namespace DxAssistant.Cases.Sqlite;

/// <summary>Step 3: which cases name which serial number. Older files name none.</summary>
internal static class JobTables
{
    private const string Tables =
        "CREATE TABLE unit_serial (serial TEXT NOT NULL, case_id TEXT NOT NULL, PRIMARY KEY (serial, case_id)) "
            + "WITHOUT ROWID;";

    public static void Make(SqliteConnection connection) => CaseSchema.Run(connection, Tables);
}
