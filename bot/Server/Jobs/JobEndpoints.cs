using DxAssistant.Cases;
using DxAssistant.Cases.Jobs;
using DxAssistant.Server.Accounts;
using DxAssistant.Server.Chat;
using DxAssistant.Server.Desk;
using DxAssistant.Server.Serving;

namespace DxAssistant.Server.Jobs;

/// <summary>The units, people, notes and visits of a job over HTTP.</summary>
internal sealed class JobEndpoints(JobDesk desk, EarlierDesk earlier, SerialLook look, ICaseStore store, Func<InUse> inUse)
{
    public void Map(IEndpointRouteBuilder routes)
    {
        routes.MapGet("/api/cases/{id}/job", ShowAsync);
        routes.MapPost("/api/cases/{id}/job", WriteAsync);
        routes.MapGet("/api/cases/{id}/job/serial", Serial);
    }

    private async Task<IResult> ShowAsync(string id, CancellationToken cancel)
    {
        var log = CaseId.IsWellFormed(id) ? await store.ReadAsync(id, cancel) : [];
        return log.IsEmpty ? Unknown() : Results.Json(JobView.Of(id, log, inUse()), ChatJson.Options);
    }

    private async Task<IResult> WriteAsync(string id, HttpContext http, CancellationToken cancel)
    {
        if (!CaseId.IsWellFormed(id)) return Unknown();
        if (await JobRequest.ReadAsync(http.Request, cancel) is not var (turnId, act))
            return Refusal.Because(StatusCodes.Status400BadRequest, JobRequest.Forms);
        return await desk.DoAsync(id, turnId, act, Clerks.PersonOf(http).Name, cancel) switch
        {
            JobAnswer.Saved => await SavedAsync(id, turnId, act, Clerks.PersonOf(http), cancel),
            JobAnswer.Refused refused => Refused(refused),
            _ => Unknown(),
        };
    }

    private async Task<IResult> SavedAsync(string id, string turnId, JobAct act, Person person, CancellationToken cancel)
    {
        if (act is JobAct.NoteUnit or JobAct.TurnToUnit or JobAct.BeginVisit)
        {
            var sight = look.Of(person, (await desk.ReadAsync(id, cancel))?.Unit?.Serial);
            look.Note(person, await earlier.TellAsync(id, turnId, person.Name, act is JobAct.BeginVisit, sight, cancel));
        }

        return await ShowAsync(id, cancel);
    }

    // What the number is, before the form is sent.
    private IResult Serial(string id, string? typed, string? series)
    {
        var act = new JobAct.NoteUnit(null, string.IsNullOrEmpty(series) ? null : series, null, typed, null, null);
        return desk.Try(act) is { } refused ? Refused(refused) : Results.NoContent();
    }

    private static IResult Refused(JobAnswer.Refused refused) =>
        Refusal.Because(StatusCodes.Status422UnprocessableEntity, refused.Why, meant: refused.Meant);

    private static IResult Unknown() => Refusal.Because(StatusCodes.Status404NotFound, CaseEndpoints.UnknownCase);
}
