using DxAssistant.Cases;
using DxAssistant.Cases.Personal;

namespace DxAssistant.Server.Privacy;

/// <summary>Removes old words as long as the program runs: at its start and then every hour.</summary>
internal sealed partial class RetentionRound(Retention retention, ILogger<RetentionRound> log) : BackgroundService
{
    private static readonly TimeSpan Between = TimeSpan.FromHours(1);

    protected override async Task ExecuteAsync(CancellationToken stoppingToken)
    {
        await Task.Yield(); // the server is not to wait for it
        using var round = new PeriodicTimer(Between);
        do
        {
            try
            {
                await retention.SweepAsync(stoppingToken);
            }
            catch (CaseFileException error)
            {
                // The words stay where they are, so the next round finds them.
                NotRemoved(log, error.Message);
            }
        }
        while (await round.WaitForNextTickAsync(stoppingToken));
    }

    [LoggerMessage(LogLevel.Warning, "Old words could not be removed: {problem}")]
    private static partial void NotRemoved(ILogger logger, string problem);
}
