using DxAssistant.Server.Chat;

namespace DxAssistant.Server.Api;

/// <summary>Says of an endpoint what its description is to say.</summary>
internal static class Described
{
    private const string Json = "application/json";

    /// <param name="part">What part of the API it belongs to.</param>
    /// <param name="does">What it does, in one sentence.</param>
    /// <typeparam name="T">What it answers.</typeparam>
    /// <param name="status">With which status.</param>
    public static RouteHandlerBuilder Says<T>(
        this RouteHandlerBuilder route, string part, string does, int status = StatusCodes.Status200OK,
        string type = Json) =>
        route.WithTags(part).WithSummary(does).Produces<T>(status, type)
            .Refuses(StatusCodes.Status401Unauthorized, StatusCodes.Status403Forbidden);

    /// <summary>The same for an endpoint that answers nothing but that it is done.</summary>
    public static RouteHandlerBuilder SaysDone(this RouteHandlerBuilder route, string part, string does) => route
        .WithTags(part).WithSummary(does).Produces(StatusCodes.Status204NoContent)
        .Refuses(StatusCodes.Status401Unauthorized, StatusCodes.Status403Forbidden);

    /// <typeparam name="T">What it takes.</typeparam>
    public static RouteHandlerBuilder Takes<T>(this RouteHandlerBuilder route) where T : notnull =>
        route.Accepts<T>(Json);

    /// <summary>That it bears an ETag and is not sent again to who has it.</summary>
    public static RouteHandlerBuilder IsTagged(this RouteHandlerBuilder route) =>
        route.Produces(StatusCodes.Status304NotModified);

    /// <param name="statuses">With which it refuses.</param>
    public static RouteHandlerBuilder Refuses(this RouteHandlerBuilder route, params ReadOnlySpan<int> statuses)
    {
        foreach (int status in statuses) route.Produces<Refusal>(status, Refusal.MediaType);
        return route;
    }
}
