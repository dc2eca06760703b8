using DxAssistant.Server.Api;
using System.Collections.Immutable;
using DxAssistant.Cases;
using DxAssistant.Server.Chat;
using DxAssistant.Server.Serving;

namespace DxAssistant.Server.Summary;

/// <summary>The summary of a case, for its page.</summary>
internal sealed class SummaryEndpoint(CaseDesk desk, Func<InUse> inUse)
{
    public void Map(IEndpointRouteBuilder routes) => routes.MapGet("/api/cases/{id}/summary", ShowAsync)
        .Says<CaseSummary>("Cases", "Shows what was found, how it was proven and what was done.").Refuses(404);

    private async Task<IResult> ShowAsync(string id, CancellationToken cancel)
    {
        var log = CaseId.IsWellFormed(id) ? await desk.ReadAsync(id, cancel) : [];
        return log.IsEmpty
            ? Refusal.Because(StatusCodes.Status404NotFound, CaseEndpoints.UnknownCase)
            : Results.Json(Summed(id, log, inUse()), ChatJson.Options);
    }

    private static CaseSummary Summed(string id, ImmutableArray<StoredEvent> log, InUse now) =>
        CaseSummary.Of(id, log, now.Titles, now.Narrowing);
}
