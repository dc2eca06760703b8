using System.CommandLine;
using DxAssistant.Server.Commands.Asking;
using DxAssistant.Server.Commands.Authoring;
using DxAssistant.Server.Commands.Keeping;

namespace DxAssistant.Server.Commands;

/// <summary>All commands of the program.</summary>
internal static class CommandLine
{
    // A server that is told to end answers and saves what is under way, for at most 30 seconds.
    private static readonly TimeSpan EndsWithin = TimeSpan.FromSeconds(35);

    /// <summary>Runs what the arguments ask for.</summary>
    /// <returns>0 done, 1 the work found problems, 2 the call was wrong.</returns>
    public static async Task<int> RunAsync(string[] arguments, Streams streams, CancellationToken cancel = default)
    {
        var call = Make(streams).Parse(arguments);
        if (call.Errors.Count > 0)
            return streams.Refuse($"{WrongCall.Said(call)}: --help lists what there is");
        var invocation = new InvocationConfiguration
        {
            Output = streams.Out,
            Error = streams.Error,
            EnableDefaultExceptionHandler = false,
            ProcessTerminationTimeout = EndsWithin,
        };
        return await call.InvokeAsync(invocation, cancel);
    }

    private static RootCommand Make(Streams streams)
    {
        var root = new RootCommand(
            "Troubleshooting assistant for ductless heat pumps. Without a command it serves the web chat on this "
                + "machine.");
        new ServeCommand(streams).AddTo(root);
        root.Add(new TalkCommand(streams).Make());
        root.Add(new CasesCommand(streams).Make());
        root.Add(MatchCommand.Make(streams));
        root.Add(GlyphCommand.Make(streams));
        root.Add(PlanCommand.Make(streams));
        root.Add(ReadCommand.Make(streams));
        root.Add(CalcCommand.Make(streams));
        root.Add(new FiguresCommand(streams).Make());
        root.Add(new ClaimsCommand(streams).Make());
        root.Add(ContentCommand.Make(streams));
        root.Add(new AccountsCommand(streams).Make());
        return root;
    }
}
