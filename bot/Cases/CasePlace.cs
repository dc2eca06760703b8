using DxAssistant.Cases.Accounts;
using DxAssistant.Cases.Postgres;
using DxAssistant.Cases.Sqlite;
using Npgsql;

namespace DxAssistant.Cases;

/// <summary>Where cases are kept: a file, or a PostgreSQL database.</summary>
public abstract record CasePlace
{
    private CasePlace() { }

    /// <summary>One SQLite file.</summary>
    public sealed record InFile(string File) : CasePlace
    {
        public override string ToString() => File;

        public override Task<ICaseStore> OpenAsync(TimeProvider clock, CancellationToken cancel = default) =>
            Task.FromResult<ICaseStore>(SqliteCaseStore.Open(File, clock));

        public override DeskBooks OpenBooks() => DeskBooks.Open(File);

        public override AccountBook OpenAccounts(TimeProvider clock) =>
            SqliteAccounts.Open(SqliteAccounts.BesideCases(File), clock);

        public override string? Missing =>
            System.IO.File.Exists(File) ? null : $"there is no file {File}: name the file of the cases with --data";
    }

    /// <summary>A PostgreSQL database.</summary>
    /// <param name="Connection">In the form <c>Host=…;Username=…;Database=…</c>.</param>
    public sealed record InDatabase(string Connection) : CasePlace
    {
        /// <summary>Names the database, and never a password.</summary>
        public override string ToString()
        {
            var parts = new NpgsqlConnectionStringBuilder(Connection);
            return $"the database {parts.Database ?? parts.Username} on {parts.Host}";
        }

        public override async Task<ICaseStore> OpenAsync(TimeProvider clock, CancellationToken cancel = default) =>
            await PostgresCaseStore.OpenAsync(Connection, clock, cancel);

        public override DeskBooks OpenBooks() =>
            DeskBooks.Open(() => new NpgsqlConnection(PostgresPlace.Bounded(Connection)));

        public override AccountBook OpenAccounts(TimeProvider clock) => PostgresAccounts.Open(Connection, clock);
    }

    /// <summary>The place that a call names: a database, a file, or else the usual file.</summary>
    public static CasePlace Of(string? store, string? file) =>
        store is not null ? new InDatabase(store) : new InFile(file ?? CaseFile.Default);

    /// <summary>Opens the cases there; makes their tables when they are not there.</summary>
    /// <exception cref="CaseFileException">The place cannot be used.</exception>
    public abstract Task<ICaseStore> OpenAsync(TimeProvider clock, CancellationToken cancel = default);

    /// <summary>Opens what is kept beside the cases there.</summary>
    /// <exception cref="CaseFileException">The place cannot be used.</exception>
    public abstract DeskBooks OpenBooks();

    /// <summary>Opens the accounts there.</summary>
    /// <exception cref="CaseFileException">The place cannot be used.</exception>
    public abstract AccountBook OpenAccounts(TimeProvider clock);

    /// <summary>Why there can be no cases in this place yet; null when there may be.</summary>
    public virtual string? Missing => null;
}
