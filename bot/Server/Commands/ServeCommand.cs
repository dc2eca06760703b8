using System.CommandLine;
using System.Globalization;
using System.Net.Sockets;
using DxAssistant.Cases;
using DxAssistant.Cases.Accounts;
using DxAssistant.Cases.Sqlite;
using DxAssistant.Server.Accounts;
using DxAssistant.Server.Channels;
using DxAssistant.Server.Commands.Settings;
using DxAssistant.Server.Serving;
using Microsoft.AspNetCore.Connections;

namespace DxAssistant.Server.Commands;

/// <summary>What the program does without a command: serve the web chat and the bot's front on this machine.</summary>
internal sealed class ServeCommand(Streams streams)
{
    private const int PortsTried = 20;

    private readonly ListenOptions listening = new();
    private readonly NewsOption news = new();
    private readonly KeepOption keep = new();
    private readonly CompanyOption company = new();
    private readonly Option<string?> accounts = CommonOptions.Accounts();
    private readonly Option<string?> content = CommonOptions.Content();
    private readonly Option<string?> data = CommonOptions.Data("cases.db in your own program folder");
    private readonly Option<string?> database = StoreOption.Make();

    public void AddTo(Command root)
    {
        listening.AddTo(root);
        news.AddTo(root);
        keep.AddTo(root);
        company.AddTo(root);
        foreach (Option option in new Option[] { content, data, database, accounts }) root.Add(option);
        root.SetAction((call, cancel) => RunAsync(call, cancel));
    }

    private async Task<int> RunAsync(ParseResult call, CancellationToken cancel)
    {
        if (listening.Read(call, out var settings) is { } wrong) return streams.Refuse(wrong);
        if (news.Read(call, ref settings) is { } untold) return streams.Refuse(untold);
        if (keep.Read(call, ref settings) is { } tooLong) return streams.Refuse(tooLong);
        if (company.Read(call, ref settings) is { } unknown) return streams.Refuse(unknown);
        string file = call.GetValue(data) ?? CaseFile.Default;
        try
        {
            var place = CasePlace.Of(call.GetValue(database), file);
            var book = call.GetValue(accounts) is { } named
                ? SqliteAccounts.Open(named, TimeProvider.System)
                : place.OpenAccounts(TimeProvider.System);
            return (settings.RefuseWithout(book.HasAccounts)
                ?? await LookAsync(settings.Company, cancel)) is { } refusal
                ? streams.Refuse(refusal)
                : await OpenAsync(call, settings, book, place, file, cancel);
        }
        catch (CaseFileException error)
        {
            return streams.Refuse(error.Message);
        }
    }

    // A company's sign-in that is away for the moment is no reason to keep those out who have a password.
    private async Task<string?> LookAsync(CompanySettings? asked, CancellationToken cancel)
    {
        if (asked is null) return null;
        var (wrong, answered) = await CompanyDescription.LookAsync(asked.Issuer, cancel);
        if (wrong is null || answered) return wrong;
        streams.Error.WriteLine(
            $"{wrong}. Look at --company and at the network; until it answers, only people with a password sign in.");
        return null;
    }

    private async Task<int> OpenAsync(
        ParseResult call, ServerSettings settings, AccountBook book, CasePlace place, string file,
        CancellationToken cancel)
    {
        int opened = OpenedContent.Open(call.GetValue(content), streams, out var live);
        if (live is null) return opened;
        using (live)
        {
            await using var store = await place.OpenAsync(TimeProvider.System, cancel);
            await using var books = place.OpenBooks();
            live.Watch(TimeProvider.System);
            return await ServeAsync(settings, listening.MayMove(call), port => ChatServer.Build(
                port
                    with { PageShelf = Beside(file, "-pages"), PagesFolder = live.Folder,
                        Proposals = Beside(file, "-proposals") }, store, () => live.Current, book, books), book, live,
                        $"{place}", cancel);
        }
    }

    private async Task<int> ServeAsync(
        ServerSettings settings, bool mayMove, Func<ServerSettings, WebApplication> build, AccountBook book,
        LiveContent live, string place,
        CancellationToken cancel)
    {
        for (int tried = 0; ; tried++)
        {
            await using var app = build(settings);
            try
            {
                await app.StartAsync(cancel);
            }
            catch (IOException error) when (error.InnerException is AddressInUseException or SocketException)
            {
                if (!mayMove || tried == PortsTried)
                    return streams.Refuse($"port {settings.Port} is taken: name another with --port");
                settings = settings with { Port = settings.Port + 1 };
                continue;
            }

            Announce(app, live, book, place);
            await app.WaitForShutdownAsync(cancel);
            return ExitCode.Done;
        }
    }

    // Beside the cases that were walked on them.
    private static string Beside(string file, string what) => Path.ChangeExtension(Path.GetFullPath(file), null) + what;

    private void Announce(WebApplication app, LiveContent live, AccountBook book, string place)
    {
        streams.Out.WriteLine(
            string.Create(CultureInfo.InvariantCulture, $"Open {app.Urls.First()}/ in a browser. Ctrl+C ends it."));
        streams.Out.WriteLine($"Content version {live.Current.Version}; cases in {place}");
        streams.Out.WriteLine(book.HasAccounts
            ? "People sign in."
            : "No accounts: this program is for whoever sits at this machine. The command accounts makes some.");
        streams.Out.WriteLine(BotFront.HasAppId(app.Configuration)
            ? $"Bot channels: {BotFront.Path}, callers sign in."
            : $"Bot channels: {BotFront.Path} has no app id, so callers "
                + (book.HasAccounts
                    ? "need a token."
                    : "are NOT asked who they are; it answers on this machine only."));
        streams.Out.Flush();
    }
}
