using System.CommandLine;
using DxAssistant.Cases;
using DxAssistant.Server.Channels;
using DxAssistant.Server.Commands.Settings;
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

    private readonly Option<string?> store = StoreOption.Make();

    public Command Make()
    {
        var talk =
            new Command("talk", "Walk through one case in the terminal.") { json, caseName, content, data, store };
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
                await using var cases = await OpenStoreAsync(call, cancel);
                return await TalkAsync(call, cases, live.Current, cancel);
            }
            catch (CaseFileException error)
            {
                return streams.Refuse(error.Message);
            }
        }
    }

    private async Task<ICaseStore> OpenStoreAsync(ParseResult call, CancellationToken cancel) =>
        call.GetValue(json) && call.GetValue(data) is null && call.GetValue(store) is null
            ? new MemoryCaseStore(TimeProvider.System)
            : await CasePlace.Of(call.GetValue(store), call.GetValue(data)).OpenAsync(TimeProvider.System, cancel);

    private async Task<int> TalkAsync(ParseResult call, ICaseStore cases, InUse inUse, CancellationToken cancel)
    {
        var desk = new CaseDesk(cases, () => inUse.Responder);
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
