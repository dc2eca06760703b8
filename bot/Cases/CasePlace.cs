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
    }

    /// <summary>The place that a call names: a database, a file, or else the usual file.</summary>
    public static CasePlace Of(string? store, string? file) =>
        store is not null ? new InDatabase(store) : new InFile(file ?? CaseFile.Default);

    /// <summary>Opens the cases there; makes their tables when they are not there.</summary>
    /// <exception cref="CaseFileException">The place cannot be used.</exception>
    public abstract Task<ICaseStore> OpenAsync(TimeProvider clock, CancellationToken cancel = default);
}
