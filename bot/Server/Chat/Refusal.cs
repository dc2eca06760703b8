namespace DxAssistant.Server.Chat;

/// <summary>Why a request was not carried out, in one line a person can act on.</summary>
internal sealed record Refusal(string Error)
{
    public static IResult Because(int status, string error) =>
        Results.Json(new Refusal(error), ChatJson.Options, statusCode: status);
}
