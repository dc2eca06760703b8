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
            await Refusal.Because(StatusCodes.Status503ServiceUnavailable, $"Not saved: {error.Message}")
                .ExecuteAsync(context);
        }
        catch (Exception error) when (!context.Response.HasStarted && !context.RequestAborted.IsCancellationRequested)
        {
            Failed(log, error);
            await Refusal.Because(
                StatusCodes.Status500InternalServerError,
                "That answer could not be worked out, and it was not kept. What was saved before is still there: say it in other words, or go back one step.")
                .ExecuteAsync(context);
        }
    }

    [LoggerMessage(Level = LogLevel.Error, Message = "A request failed")]
    private static partial void Failed(ILogger log, Exception error);
}
