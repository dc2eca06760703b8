using System.Collections.Immutable;
using System.Net;
using DxAssistant.Cases;
using DxAssistant.Cases.Accounts;
using DxAssistant.Conversation.Messages;
using DxAssistant.Conversation.Replies;
using DxAssistant.Conversation.Sheets;
using DxAssistant.Conversation.State;
using DxAssistant.Server.Serving;
using Microsoft.AspNetCore.Builder;

namespace DxAssistant.Browser.Tests;

/// <summary>The real server on a port of this machine, which can be stopped and started again on the same
/// cases.</summary>
internal sealed class Site : IAsyncDisposable
{
    private readonly MemoryCaseStore store = new(TimeProvider.System);
    private readonly Func<InUse> inUse;
    private WebApplication app = null!;
    private readonly PagesOnDisk? pages;
    private AccountBook? book;
    private int port;

    private Site(Func<InUse> inUse, PagesOnDisk? pages = null) => (this.inUse, this.pages) = (inUse, pages);

    public string Address => $"http://127.0.0.1:{port}";

    public static Task<Site> StartAsync()
    {
        var script = new InUse(new Script(), TitleBook.Empty, "script");
        return StartAsync(() => script);
    }

    /// <summary>With a folder of pages for authors.</summary>
    public static Task<Site> StartAsync(PagesOnDisk pages)
    {
        var script = new InUse(new Script(), TitleBook.Empty, "script");
        return StartAsync(() => script, pages);
    }

    public static async Task<Site> StartAsync(Func<InUse> inUse, PagesOnDisk? pages = null)
    {
        var site = new Site(inUse, pages);
        await site.ResumeAsync();
        return site;
    }

    /// <summary>With accounts: whoever comes signs in first.</summary>
    public static async Task<Site> StartAsync(AccountBook book, Func<InUse>? inUse = null)
    {
        var script = new InUse(new Script(), TitleBook.Empty, "script");
        var site = new Site(inUse ?? (() => script)) { book = book };
        await site.ResumeAsync();
        return site;
    }

    public async Task ResumeAsync()
    {
        inUse(); // read here, not while requests hold the few threads there are
        app = ChatServer.Build(new ServerSettings(IPAddress.Loopback, port, [])
        {
            PagesFolder = pages?.Folder, Proposals = pages?.Proposals,
        }, store, inUse, book);
        await app.StartAsync();
        port = new Uri(app.Urls.First()).Port;
    }

    /// <summary>Somebody else says something in a case.</summary>
    public Task SayAsync(string id, string words) => new CaseDesk(store, () => inUse().Responder)
        .TakeAsync(id, new Message(Guid.NewGuid().ToString("N"), new MessageBody.Words(words)));

    /// <summary>Somebody answers the open question of a case.</summary>
    /// <returns>False when there is none.</returns>
    public async Task<bool> AnswerAsync(string id, string by, Func<OpenQuestion, MessageBody> answer)
    {
        var state = Fold.Apply(CaseState.New, (await store.ReadAsync(id)).Select(stored => stored.Event));
        if (state is not { ClosedHow: null, Question: { } question }) return false;
        await new CaseDesk(store, () => inUse().Responder).TakeAsync(id,
            new Message(Guid.NewGuid().ToString("N"), answer(question), by));
        return true;
    }

    public Task<ImmutableArray<StoredEvent>> ReadAsync(string id) => store.ReadAsync(id);

    public async Task StopAsync() => await app.DisposeAsync();

    public async ValueTask DisposeAsync()
    {
        await app.DisposeAsync();
        await store.DisposeAsync();
    }
}
