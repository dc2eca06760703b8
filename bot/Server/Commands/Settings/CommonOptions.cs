using System.CommandLine;

namespace DxAssistant.Server.Commands.Settings;

/// <summary>Options that several commands share.</summary>
internal static class CommonOptions
{
    public static Option<string?> Content() => new("--content")
    {
        Description = "The folder of the pages. Default: the folder content beside the program or above it.",
        HelpName = "FOLDER",
    };

    public static Option<string?> Data(string otherwise) => new("--data")
    {
        Description = $"The file in which cases are kept. Default: {otherwise}.",
        HelpName = "FILE",
    };

    public static Option<string?> Accounts() => new("--accounts")
    {
        Description =
            "The file in which accounts are kept. Default: accounts.db beside the file of cases, or the --store "
                + "database.",
        HelpName = "FILE",
    };
}
