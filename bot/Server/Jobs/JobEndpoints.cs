using DxAssistant.Cases;
using DxAssistant.Cases.Jobs;
using DxAssistant.Server.Accounts;
using DxAssistant.Server.Api;
using DxAssistant.Server.Chat;
using DxAssistant.Server.Desk;
using DxAssistant.Server.Serving;

namespace DxAssistant.Server.Jobs;

/// <summary>The units, people, notes and visits of a job over HTTP.</summary>
internal sealed class JobEndpoints(JobDesk desk, EarlierDesk earlier, SerialLook look, ICaseStore store,
    Func<InUse> inUse)
{
    private const string Part = "Jobs";

    public void Map(IEndpointRouteBuilder routes)
    {
        routes.MapGet("/api/cases/{id}/job", ShowAsync)
            .Says<JobView>(Part, "Shows the units, people, notes and visits of a case.").IsTagged().Refuses(404);
        routes.MapPost("/api/cases/{id}/job", WriteAsync)
            .Says<JobView>(Part, "Writes something of the job down: a turnId and exactly one of the rest.")
            .Takes<JobRequest>().Refuses(400, 404, 422);
        routes.MapGet("/api/cases/{id}/job/serial", Serial)
            .SaysDone(Part, "Says whether a serial number fits its series.").Refuses(422);
    }

    private async Task<IResult> ShowAsync(string id, CancellationToken cancel)
    {
        var log = CaseId.IsWellFormed(id) ? await store.ReadAsync(id, cancel) : [];
        return log.IsEmpty ? Unknown() : Tagged.Json(JobView.Of(id, log, inUse()));
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

    private async Task<IResult> SavedAsync(string id, string turnId, JobAct act, Person person,
        CancellationToken cancel)
    {
        if (act is JobAct.NoteUnit or JobAct.TurnToUnit or JobAct.BeginVisit)
        {
            var sight = look.Of(person, (await desk.ReadAsync(id, cancel))?.Unit?.Serial);
            look.Note(person,
                await earlier.TellAsync(id, turnId, person.Name, act is JobAct.BeginVisit, sight, cancel));
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
