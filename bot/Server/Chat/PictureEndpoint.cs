using DxAssistant.Server.Api;
using System.Text;
using DxAssistant.Cases;
using DxAssistant.Conversation.Events;
using DxAssistant.Knowledge.Pictures;

namespace DxAssistant.Server.Chat;

/// <summary>A picture of a case as a file to keep.</summary>
internal sealed class PictureEndpoint(CaseDesk desk)
{
    private const string UnknownPicture = "There is no such picture in this case.";

    public void Map(IEndpointRouteBuilder routes) => routes.MapGet("/api/cases/{id}/picture", ShowAsync)
        .Says<string>("Cases", "Gives a picture of a reply as a file.", type: "image/svg+xml").Refuses(404);

    private async Task<IResult> ShowAsync(string id, string? name, CancellationToken cancel)
    {
        var log = CaseId.IsWellFormed(id) ? await desk.ReadAsync(id, cancel) : [];
        if (log.IsEmpty) return Refusal.Because(StatusCodes.Status404NotFound, CaseEndpoints.UnknownCase);
        var picture = log.Select(stored => stored.Event).OfType<Replied>()
            .SelectMany(replied => replied.Reply.Segments).SelectMany(segment => segment.Pictures ?? [])
            .FirstOrDefault(shown => shown.Id == name);
        return picture is null
            ? Refusal.Because(StatusCodes.Status404NotFound, UnknownPicture)
            : Results.File(Encoding.UTF8.GetBytes(PictureFile.Of(picture.Svg)), "image/svg+xml", FileName(picture.Id));
    }

    private static string FileName(string id) => Path.GetFileNameWithoutExtension(id) + ".svg";
}
