using System.CommandLine;

namespace DxAssistant.Server.Commands;

/// <summary>The option that keeps cases in a database.</summary>
internal static class StoreOption
{
    public static Option<string?> Make() => new("--store")
    {
        Description = "Keep cases in PostgreSQL; what is beside them stays beside the --data file. The password belongs in PGPASSWORD.",
        HelpName = "\"Host=…;Username=…;Database=…\"",
    };
}
