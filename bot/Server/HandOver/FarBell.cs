using DxAssistant.Cases;

namespace DxAssistant.Server.HandOver;

/// <summary>Rings the bell for what other programs on the same cases append, as long as the program runs.</summary>
internal sealed class FarBell(ICaseNews news, CaseBell bell) : BackgroundService
{
    protected override Task ExecuteAsync(CancellationToken stoppingToken) =>
        news.HearAsync(bell.RingFor, stoppingToken);
}
