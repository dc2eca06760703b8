using System.CommandLine;
using DxAssistant.Server.Serving;

namespace DxAssistant.Server.Commands.Settings;

/// <summary>The option that says how long people's own words are kept.</summary>
internal sealed class KeepOption
{
    private const int Most = 36_500;

    private readonly Option<int?> keep = new("--keep-personal")
    {
        Description =
            "Days after which people's own words, names, numbers and photos are removed from cases and calls; readings "
                + "and results stay. Default: never.",
        HelpName = "DAYS",
    };

    public void AddTo(Command command) => command.Add(keep);

    /// <returns>What is wrong with the call; null when nothing is.</returns>
    public string? Read(ParseResult call, ref ServerSettings settings)
    {
        if (call.GetValue(keep) is not { } days) return null;
        if (days is < 1 or > Most)
            return FormattableString.Invariant(
                $"{days} is not a time to keep words: give days from 1 to {Most}, or leave --keep-personal out");
        settings = settings with { KeepPersonal = days };
        return null;
    }
}
