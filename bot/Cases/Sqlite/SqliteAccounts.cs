using System.Data;
using DxAssistant.Cases.Accounts;
using Microsoft.Data.Sqlite;

namespace DxAssistant.Cases.Sqlite;

/// <summary>A book of accounts in one SQLite file.</summary>
public static class SqliteAccounts
{
    private const string Tables = """
        PRAGMA journal_mode = WAL;
        CREATE TABLE IF NOT EXISTS account (
            name TEXT PRIMARY KEY, roles INTEGER NOT NULL, password_hash TEXT, stamp TEXT NOT NULL,
            failed_tries INTEGER NOT NULL, locked_until INTEGER, is_open INTEGER NOT NULL);
        CREATE TABLE IF NOT EXISTS token (
            id TEXT PRIMARY KEY, label TEXT NOT NULL, scopes INTEGER NOT NULL, made_by TEXT NOT NULL,
            made_at INTEGER NOT NULL, revoked_at INTEGER, hash TEXT NOT NULL UNIQUE);
        CREATE TABLE IF NOT EXISTS case_grant (
            case_id TEXT NOT NULL, account TEXT NOT NULL, at INTEGER NOT NULL, PRIMARY KEY (account, case_id));
        CREATE TABLE IF NOT EXISTS audit (
            number INTEGER PRIMARY KEY AUTOINCREMENT, at INTEGER NOT NULL, who TEXT NOT NULL, did TEXT NOT NULL,
            done_to TEXT NOT NULL);
        CREATE TABLE IF NOT EXISTS session (id TEXT PRIMARY KEY, account TEXT NOT NULL, began INTEGER NOT NULL);
        CREATE TABLE IF NOT EXISTS company_person (subject TEXT PRIMARY KEY, account TEXT NOT NULL UNIQUE);
        CREATE TABLE IF NOT EXISTS session_key (id TEXT PRIMARY KEY, body TEXT NOT NULL);
        """;

    /// <summary>Where accounts are kept unless told otherwise: beside the file of cases.</summary>
    public static string BesideCases(string caseFile) =>
        Path.Combine(Path.GetDirectoryName(Path.GetFullPath(caseFile))!, "accounts.db");

    /// <summary>A book that lasts as long as the program, for a server that keeps nothing.</summary>
    public static AccountBook InMemory(TimeProvider clock)
    {
        string source = new SqliteConnectionStringBuilder
        {
            DataSource = $"accounts-{Guid.NewGuid():N}",
            Mode = SqliteOpenMode.Memory,
            Cache = SqliteCacheMode.Shared,
        }.ToString();

        // The last connection that closes takes the tables with it.
        var keeper = new SqliteConnection(source);
        keeper.Open();
        return new AccountBook(() => keeper.State == ConnectionState.Open ? new SqliteConnection(source) : keeper,
            Tables, clock);
    }

    /// <summary>Opens a book; makes it, and its folder, when it is not there.</summary>
    /// <exception cref="CaseFileException">The file cannot be opened or is no book of accounts.</exception>
    public static AccountBook Open(string file, TimeProvider clock)
    {
        try
        {
            PrivateFolder.Make(Path.GetDirectoryName(Path.GetFullPath(file))!);
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException)
        {
            throw new CaseFileException($"{file} cannot be used for accounts ({error.Message})", error);
        }

        string source = new SqliteConnectionStringBuilder { DataSource = file, DefaultTimeout = 10 }.ToString();
        return new AccountBook(() => new SqliteConnection(source), Tables, clock);
    }
}
