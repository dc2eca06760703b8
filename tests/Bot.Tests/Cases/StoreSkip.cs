using DxAssistant.Bot.Tests.Cases.Postgres;
using Xunit.Abstractions;

namespace DxAssistant.Bot.Tests.Cases;

/// <summary>Why the store of a test class cannot be had here.</summary>
internal static class StoreSkip
{
    /// <summary>Null when it can.</summary>
    public static string? Why(ITestMethod test) =>
        !PostgresServer.IsThere && test.TestClass.Class.GetCustomAttributes(typeof(NeedsPostgresAttribute)).Any()
            ? "no PostgreSQL on this machine: install the package postgresql" : null;
}
