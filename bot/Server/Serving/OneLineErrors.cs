using DxAssistant.Cases;
using DxAssistant.Server.Chat;

namespace DxAssistant.Server.Serving;

/// <summary>Turns what went wrong inside into one line for the person and the whole of it for the log.</summary>
internal sealed partial class OneLineErrors(RequestDelegate next, ILogger<OneLineErrors> log)
{
    public async Task InvokeAsync(HttpContext context)
    {
        try
        {
            await next(context);
        }
        catch (BadHttpRequestException error)
        {
            await Refusal.Because(error.StatusCode, "The request could not be read.").ExecuteAsync(context);
        }
        catch (CaseFileException error) when (!context.Response.HasStarted)
        {
            Failed(log, error);
            await Refusal.Because(
                StatusCodes.Status503ServiceUnavailable, FailureText.Of(context.Request, error.Message))
                .ExecuteAsync(context);
        }
        catch (Exception error) when (!context.Response.HasStarted && !context.RequestAborted.IsCancellationRequested)
        {
            Failed(log, error);
            await Refusal.Because(StatusCodes.Status500InternalServerError, FailureText.Of(context.Request))
                .ExecuteAsync(context);
        }
    }

    [LoggerMessage(Level = LogLevel.Error, Message = "A request failed")]
    private static partial void Failed(ILogger log, Exception error);
}
