using DxAssistant.Cases;

namespace DxAssistant.Server.Desk;

/// <summary>Tells news as long as the program runs.</summary>
internal sealed partial class NewsRound(NewsTeller teller, ILogger<NewsRound> log) : BackgroundService
{
    private static readonly TimeSpan Between = TimeSpan.FromSeconds(1);

    protected override async Task ExecuteAsync(CancellationToken stoppingToken)
    {
        using var round = new PeriodicTimer(Between);
        while (await round.WaitForNextTickAsync(stoppingToken))
        {
            try
            {
                await teller.TellAsync(stoppingToken);
            }
            catch (CaseFileException error)
            {
                // The news stays where it is, so the next round finds it.
                NotRead(log, error.Message);
            }
        }
    }

    [LoggerMessage(LogLevel.Warning, "News of claims could not be read: {problem}")]
    private static partial void NotRead(ILogger logger, string problem);
}
