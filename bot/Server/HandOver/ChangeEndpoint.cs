using DxAssistant.Server.Api;
using System.Globalization;
using DxAssistant.Cases;
using DxAssistant.Server.Accounts;
using DxAssistant.Server.Chat;
using DxAssistant.Server.Desk;

namespace DxAssistant.Server.HandOver;

/// <summary>Word of each change of a case as it happens.</summary>
/// <remarks>
/// Server-sent events (WHATWG HTML, 9.2). The id of an event is the last sequence number of the log, so whoever
/// comes back with it as Last-Event-ID hears only of what came since.
/// </remarks>
internal sealed class ChangeEndpoint(ICaseStore store, CaseBell bell, CaseGrants grants,
    IHostApplicationLifetime program)
{
    // A stream ends by itself, so that whoever listens is asked again who they are.
    private static readonly TimeSpan Longest = TimeSpan.FromMinutes(5);

    // So often the store is asked what other programs on the same cases appended, where they do not tell of it.
    private static readonly TimeSpan Elsewhere = TimeSpan.FromSeconds(2);

    public void Map(IEndpointRouteBuilder routes) => routes.MapGet("/api/cases/{id}/changes", TellAsync)
        .Says<string>("Cases", "Tells the last number of the log whenever it grew, as server-sent events.",
            type: "text/event-stream").Refuses(404);

    private async Task TellAsync(string id, HttpContext http, CancellationToken cancel)
    {
        if (!CaseId.IsWellFormed(id) || await store.LastAsync(id, cancel) == 0)
        {
            await Refusal.Because(StatusCodes.Status404NotFound, CaseEndpoints.UnknownCase).ExecuteAsync(http);
            return;
        }

        // The program does not wait for listeners when it ends.
        using var until = CancellationTokenSource.CreateLinkedTokenSource(cancel, program.ApplicationStopping);
        until.CancelAfter(Longest);
        try
        {
            await TellAllAsync(id, Clerks.PersonOf(http), http, until.Token);
        }
        catch (OperationCanceledException)
        {
            // The page was left, or is to ask again.
        }
        finally
        {
            bell.Ring(id);
        }
    }

    private async Task TellAllAsync(string id, Person person, HttpContext http, CancellationToken cancel)
    {
        http.Response.ContentType = "text/event-stream";
        long known = long.TryParse(http.Request.Headers["Last-Event-ID"], NumberStyles.None,
            CultureInfo.InvariantCulture, out long last) ? last : -1;
        while (grants.MaySee(person, id))
        {
            var next = bell.Next(id); // before the store is asked, so that nothing falls in between
            long now = await store.LastAsync(id, cancel);
            await http.Response.WriteAsync(now == known
                ? ":\n\n"
                : FormattableString.Invariant($"id: {now}\ndata: {now}\n\n"), cancel);
            await http.Response.Body.FlushAsync(cancel);
            known = now;
            await bell.UntilAsync(next, Elsewhere, cancel);
            cancel.ThrowIfCancellationRequested();
        }
    }
}
