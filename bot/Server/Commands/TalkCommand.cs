using System.CommandLine;
using DxAssistant.Cases;
using DxAssistant.Cases.Sqlite;
using DxAssistant.Server.Channels;
using DxAssistant.Server.Serving;

namespace DxAssistant.Server.Commands;

/// <summary><c>talk</c>: one case in the terminal, or with <c>--json</c> one case driven by a program.</summary>
internal sealed class TalkCommand(Streams streams)
{
    private readonly Option<bool> json = new("--json") { Description = "JSON Lines in and out, for programs." };
    private readonly Option<string?> caseName = new("--case")
    {
        Description = "Go on with this case.",
        HelpName = "NAME",
    };

    private readonly Option<string?> content = CommonOptions.Content();
    private readonly Option<string?> data = CommonOptions.Data(
        "cases.db in your own program folder; with --json cases are not kept");

    public Command Make()
    {
        var talk = new Command("talk", "Walk through one case in the terminal.") { json, caseName, content, data };
        talk.SetAction((call, cancel) => RunAsync(call, cancel));
        return talk;
    }

    private async Task<int> RunAsync(ParseResult call, CancellationToken cancel)
    {
        int opened = OpenedContent.Open(call.GetValue(content), streams, out var live);
        if (live is null) return opened;
        using (live)
        {
            try
            {
                await using var store = OpenStore(call);
                return await TalkAsync(call, store, live.Current, cancel);
            }
            catch (CaseFileException error)
            {
                return streams.Refuse(error.Message);
            }
        }
    }

    private ICaseStore OpenStore(ParseResult call) => call.GetValue(json) && call.GetValue(data) is null
        ? new MemoryCaseStore(TimeProvider.System)
        : SqliteCaseStore.Open(call.GetValue(data) ?? CaseFile.Default, TimeProvider.System);

    private async Task<int> TalkAsync(ParseResult call, ICaseStore store, InUse inUse, CancellationToken cancel)
    {
        var desk = new CaseDesk(store, () => inUse.Responder);
        var line = new CaseConversation(
            new LocalChatAdapter(new AssistantBot(desk)), call.GetValue(caseName) ?? CaseId.New());
        if (call.GetValue(caseName) is { } name && (await desk.ReadAsync(name, cancel)).IsEmpty)
        {
            return streams.Refuse($"there is no case {name}: leave --case out to begin a new one");
        }

        return call.GetValue(json)
            ? await new JsonTalk(streams, line).RunAsync(cancel)
            : await new TerminalTalk(streams, line).RunAsync(cancel);
    }
}
