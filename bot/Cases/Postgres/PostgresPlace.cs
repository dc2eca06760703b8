using Npgsql;

namespace DxAssistant.Cases.Postgres;

/// <summary>Where a database is, with bounds to how much of it is used and how long it is waited for.</summary>
internal static class PostgresPlace
{
    // A server of the usual size takes 100 connections in all, and there may be several of us.
    private const int MostConnections = 30;

    // Somebody waits on a roof for the answer. What takes longer by its nature says so itself.
    private const int OpensWithinSeconds = 10, AnswersWithinSeconds = 20;

    private static readonly NpgsqlConnectionStringBuilder Usual = new();

    /// <summary>The connection with the bounds that it does not name itself.</summary>
    /// <exception cref="ArgumentException">It is not in the form <c>Host=…;Username=…;Database=…</c>.</exception>
    public static string Bounded(string connection)
    {
        var parts = new NpgsqlConnectionStringBuilder(connection);
        if (parts.MaxPoolSize == Usual.MaxPoolSize) parts.MaxPoolSize = MostConnections;
        if (parts.Timeout == Usual.Timeout) parts.Timeout = OpensWithinSeconds;
        if (parts.CommandTimeout == Usual.CommandTimeout) parts.CommandTimeout = AnswersWithinSeconds;
        return parts.ToString();
    }
}
