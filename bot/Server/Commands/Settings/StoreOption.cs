using System.CommandLine;

namespace DxAssistant.Server.Commands.Settings;

/// <summary>The option that keeps cases in a database.</summary>
internal static class StoreOption
{
    public static Option<string?> Make() => new("--store")
    {
        Description =
            "Keep cases, claims, calls, codes and accounts in PostgreSQL; pages taken along and proposals stay beside "
                + "the --data file. The password belongs in PGPASSWORD.",
        HelpName = "\"Host=…;Username=…;Database=…\"",
    };
}
