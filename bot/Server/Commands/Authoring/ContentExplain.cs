using System.CommandLine;
using DxAssistant.Knowledge.Content;

namespace DxAssistant.Server.Commands.Authoring;

/// <summary><c>content explain [rule]</c>: what a rule means, what breaks it and what does not.</summary>
internal static class ContentExplain
{
    public static Command Make(Streams streams)
    {
        var rule = new Argument<string?>("rule")
        {
            Description = "The name in the square brackets of a diagnostic; without it all names are listed.",
            Arity = ArgumentArity.ZeroOrOne,
        };
        var explain = new Command("explain", "Say what a rule means, with a bad and a good example.") { rule };
        explain.SetAction(call => Run(call.GetValue(rule), streams));
        return explain;
    }

    private static int Run(string? name, Streams streams)
    {
        if (name is null)
        {
            foreach (RuleEntry rule in RuleBook.All) streams.Out.Write($"{rule.Name}: {rule.Meaning}\n");
            return ExitCode.Done;
        }

        if (RuleBook.Find(name) is not { } found)
        {
            return streams.Refuse($"there is no rule {name}: " + (RuleBook.Meant(name) is { } near
                ? $"did you mean {near}?" : "content explain lists them"));
        }

        streams.Out.Write(RuleBook.Section(found));
        return ExitCode.Done;
    }
}
