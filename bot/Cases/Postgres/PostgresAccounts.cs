using DxAssistant.Cases.Accounts;
using Npgsql;

namespace DxAssistant.Cases.Postgres;

/// <summary>A book of accounts in a PostgreSQL database, shared by all servers on it.</summary>
public static class PostgresAccounts
{
    // Several servers may start at once; one of them makes the tables. The number is this program's own.
    private const string Tables = """
        SELECT pg_advisory_xact_lock(7305812);
        CREATE TABLE IF NOT EXISTS account (
            name TEXT COLLATE "C" PRIMARY KEY, roles INTEGER NOT NULL, password_hash TEXT, stamp TEXT NOT NULL,
            failed_tries INTEGER NOT NULL, locked_until BIGINT, is_open INTEGER NOT NULL);
        CREATE TABLE IF NOT EXISTS token (
            id TEXT COLLATE "C" PRIMARY KEY, label TEXT NOT NULL, scopes INTEGER NOT NULL, made_by TEXT NOT NULL,
            made_at BIGINT NOT NULL, revoked_at BIGINT, hash TEXT NOT NULL UNIQUE);
        CREATE TABLE IF NOT EXISTS case_grant (
            case_id TEXT NOT NULL, account TEXT NOT NULL, at BIGINT NOT NULL, PRIMARY KEY (account, case_id));
        CREATE TABLE IF NOT EXISTS audit (
            number BIGINT GENERATED ALWAYS AS IDENTITY PRIMARY KEY, at BIGINT NOT NULL, who TEXT NOT NULL, did TEXT NOT NULL,
            done_to TEXT NOT NULL);
        CREATE TABLE IF NOT EXISTS session (id TEXT PRIMARY KEY, account TEXT NOT NULL, began BIGINT NOT NULL);
        CREATE TABLE IF NOT EXISTS company_person (subject TEXT PRIMARY KEY, account TEXT NOT NULL UNIQUE);
        CREATE TABLE IF NOT EXISTS session_key (id TEXT PRIMARY KEY, body TEXT NOT NULL);
        """;

    /// <summary>Opens the book; makes its tables when they are not there.</summary>
    /// <param name="connection">In the form <c>Host=…;Username=…;Database=…</c>.</param>
    /// <exception cref="CaseFileException">The database cannot be used.</exception>
    public static AccountBook Open(string connection, TimeProvider clock)
    {
        try
        {
            return new AccountBook(() => new NpgsqlConnection(PostgresPlace.Bounded(connection)), Tables, clock);
        }
        catch (Exception error) when (error is ArgumentException or CaseFileException)
        {
            throw new CaseFileException(
                $"the database cannot be used for accounts ({(error.InnerException ?? error).Message}): give --store as \"Host=…;Username=…;Database=…\", the password in PGPASSWORD",
                error);
        }
    }
}
