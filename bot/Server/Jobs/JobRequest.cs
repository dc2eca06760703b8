using System.Text.Json;
using System.Text.Json.Serialization;
using DxAssistant.Cases;
using DxAssistant.Cases.Jobs;
using DxAssistant.Server.Chat;

namespace DxAssistant.Server.Jobs;

/// <summary>Something to write down, as a page or a program sends it: a turn id and exactly one of the rest.</summary>
/// <param name="Visit"><c>begin</c> or <c>end</c>.</param>
/// <param name="TakeBack">The turn of the last change, as the job names it.</param>
internal sealed record JobRequest(
    string? TurnId, JobAct.NoteUnit? Unit, JobAct.NotePerson? Person, string? Note, string? Visit, int? TurnTo,
    string? DropPhoto,
    string? TakeBack)
{
    public const string Forms =
        """Send {"turnId":"…"} and one of {"unit":{…}}, {"person":{"part":"…","name":"…"}}, {"note":"…"}, {"visit":"begin"}, {"turnTo":1} or {"takeBack":"…"}.""";

    private const int MostBytes = 64 * 1024;

    /// <summary>Reads a request; null when it is none.</summary>
    public static async Task<(string TurnId, JobAct Act)?> ReadAsync(HttpRequest request, CancellationToken cancel)
    {
        if (!request.HasJsonContentType() || request.ContentLength > MostBytes) return null;
        try
        {
            var read = await JsonSerializer.DeserializeAsync<JobRequest>(request.Body, Options, cancel);
            return read is { TurnId: { } turnId, Act: { } act } && TurnName.IsFit(turnId) ? (turnId, act) : null;
        }
        catch (JsonException)
        {
            return null;
        }
    }

    private static readonly JsonSerializerOptions Options = new(JsonSerializerDefaults.Web)
    {
        UnmappedMemberHandling = JsonUnmappedMemberHandling.Disallow, RespectNullableAnnotations = true,
    };

    [JsonIgnore]
    private JobAct? Act
    {
        get
        {
            JobAct?[] told =
            [
                Unit, Person, Note is null ? null : new JobAct.WriteNote(Note), TurnTo is { } unit
                    ? new JobAct.TurnToUnit(unit)
                    : null,
                DropPhoto is null ? null : new JobAct.DropPhoto(DropPhoto), TakeBack is null
                    ? null
                    : new JobAct.TakeBack(TakeBack),
                Visit switch { "begin" => new JobAct.BeginVisit(), "end" => new JobAct.EndVisit(), _ => null },
            ];
            return told.OfType<JobAct>().ToList() is [var only] ? only : null;
        }
    }
}
