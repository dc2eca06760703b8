using DxAssistant.Cases;
using DxAssistant.Cases.Jobs;
using DxAssistant.Cases.Photos;
using DxAssistant.Server.Api;
using DxAssistant.Server.Chat;
using DxAssistant.Server.Desk;
using Microsoft.AspNetCore.Http.Features;

namespace DxAssistant.Server.Jobs;

/// <summary>The photos of a job over HTTP.</summary>
internal sealed class PhotoEndpoints(JobDesk desk)
{
    private const string TooBig = "A photo has at most 8 MB. Nothing was kept.";

    // Whatever it is taken for: nothing in it runs, loads or frames anything.
    private const string Policy = "default-src 'none'; sandbox; frame-ancestors 'none'";

    public void Map(IEndpointRouteBuilder routes)
    {
        routes.MapPost("/api/cases/{id}/photos", AddAsync).Accepts<byte[]>("*/*")
            .Says<JobPhoto[]>("Jobs", "Adds a photo, which is the body; at most 8 MB.", StatusCodes.Status201Created)
            .Refuses(400, 404, 413, 422);
        routes.MapGet("/api/cases/{id}/photos/{hash}", ShowAsync)
            .Says<byte[]>("Jobs", "Gives a photo.", type: "image/jpeg").Refuses(404);
    }

    private async Task<IResult> AddAsync(string id, string? turnId, string? shows, int? unit, HttpContext http,
        CancellationToken cancel)
    {
        if (!CaseId.IsWellFormed(id)) return Unknown();
        if (turnId is null || !TurnName.IsFit(turnId))
            return Refusal.Because(StatusCodes.Status400BadRequest,
                "Send the photo as the body, with ?turnId=…&shows=…&unit=….");
        if (await ReadAsync(http, cancel) is not { } bytes)
            return Refusal.Because(StatusCodes.Status413PayloadTooLarge, TooBig);
        return await desk.AddPhotoAsync(id, turnId, bytes, shows ?? "", unit
            ?? 1, Clerks.PersonOf(http).Name, cancel) switch
        {
            JobAnswer.Saved saved =>
                Results.Json(saved.Job.Photos, ChatJson.Options, statusCode: StatusCodes.Status201Created),
            JobAnswer.Refused refused => Refusal.Because(StatusCodes.Status422UnprocessableEntity, refused.Why),
            _ => Unknown(),
        };
    }

    private async Task<IResult> ShowAsync(string id, string hash, HttpContext http, CancellationToken cancel)
    {
        if (!CaseId.IsWellFormed(id) || !Photo.IsHash(hash) || await desk.PhotoAsync(id, hash, cancel) is not { } photo)
            return Refusal.Because(StatusCodes.Status404NotFound, "There is no such photo here, or it was removed.");
        var headers = http.Response.Headers;
        headers.ContentSecurityPolicy = Policy;
        headers.XContentTypeOptions = "nosniff";
        headers.ContentDisposition = $"attachment; filename=\"{hash[..12]}.{photo.Type["image/".Length..]}\"";
        headers["Cross-Origin-Resource-Policy"] = "same-origin";
        return Results.Bytes(photo.Bytes, photo.Type);
    }

    // One byte over the limit tells that there are more.
    private static async Task<byte[]?> ReadAsync(HttpContext http, CancellationToken cancel)
    {
        if (http.Request.ContentLength > Photo.Largest) return null;
        if (http.Features.Get<IHttpMaxRequestBodySizeFeature>() is { IsReadOnly: false } size)
            size.MaxRequestBodySize = Photo.Largest + 1;
        using var read = new MemoryStream();
        byte[] piece = new byte[64 * 1024];
        for (int got; (got = await http.Request.Body.ReadAsync(piece, cancel)) > 0;)
        {
            if (read.Length + got > Photo.Largest) return null;
            read.Write(piece, 0, got);
        }

        return read.ToArray();
    }

    private static IResult Unknown() => Refusal.Because(StatusCodes.Status404NotFound, CaseEndpoints.UnknownCase);
}
