using Npgsql;

namespace DxAssistant.Cases.Postgres;

/// <summary>How long and how often a database is asked, where whoever gave the connection said nothing about it.</summary>
internal static class PostgresPlace
{
    // A server of the usual size takes 100 connections in all, and there may be several of us.
    private const int MostConnections = 30;

    // Somebody waits for the answer: a database that cannot be reached is said to be so before they give up.
    private const int AnswersWithinSeconds = 10;
    private const int OpensWithinSeconds = 5;

    /// <exception cref="ArgumentException">That is no connection string.</exception>
    public static string Bounded(string connection)
    {
        var (given, usual) = (new NpgsqlConnectionStringBuilder(connection), new NpgsqlConnectionStringBuilder());
        if (given.MaxPoolSize == usual.MaxPoolSize) given.MaxPoolSize = MostConnections;
        if (given.CommandTimeout == usual.CommandTimeout) given.CommandTimeout = AnswersWithinSeconds;
        if (given.Timeout == usual.Timeout) given.Timeout = OpensWithinSeconds;
        return given.ConnectionString;
    }
}
