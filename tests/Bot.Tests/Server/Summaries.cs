using System.Collections.Immutable;
using DxAssistant.Cases;
using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.Sheets;
using DxAssistant.Server.Summary;

namespace DxAssistant.Bot.Tests.Server;

/// <summary>Summaries of logs that no store holds: a minute a turn, pages named by their ids.</summary>
internal static class Summaries
{
    private static readonly DateTimeOffset Noon = new(2030, 5, 6, 12, 0, 0, TimeSpan.Zero);

    public static CaseSummary Of(IEnumerable<CaseEvent> events)
    {
        var log = ImmutableArray.CreateBuilder<StoredEvent>();
        int turn = 0;
        foreach (CaseEvent happened in events)
        {
            if (happened is Said) turn++;
            log.Add(new StoredEvent(log.Count + 1, $"t{turn}", Noon.AddMinutes(turn), happened));
        }

        return CaseSummary.Of("a", log.ToImmutable(), TitleBook.Empty, _ => null);
    }
}
