using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.Replies;

namespace DxAssistant.Cases.Claims;

/// <summary>Reads a log once and keeps, for each check, when it last gave a result and the figures of its
/// verdict.</summary>
public sealed class SeenFigures
{
    private readonly Dictionary<string, DateTimeOffset> seenAt = new(StringComparer.Ordinal);
    private readonly Dictionary<string, Segment?> figures = new(StringComparer.Ordinal);
    private readonly List<string> seenThisTurn = [];

    /// <summary>When a check last gave a result, UTC.</summary>
    /// <exception cref="KeyNotFoundException">It gave none.</exception>
    public DateTimeOffset At(string check) => seenAt[check];

    /// <summary>The segment that told the verdict of a check; null when its outcome was tapped.</summary>
    public Segment? Of(string check) => figures.GetValueOrDefault(check);

    public void Take(StoredEvent stored)
    {
        switch (stored.Event)
        {
            case Said:
                seenThisTurn.Clear();
                break;
            case OutcomeSeen seen:
                if (seen.Verdict is not null) seenThisTurn.Add(seen.Check);
                seenAt[seen.Check] = stored.At;
                break;
            case Replied replied:
                Note(replied.Reply);
                break;
        }
    }

    // The verdicts of a reply are in the order of the results it took.
    private void Note(Reply reply)
    {
        var verdicts = reply.Segments.Where(s => s.Verdict is not null).ToList();
        for (int i = 0; i < seenThisTurn.Count; i++) figures[seenThisTurn[i]] = verdicts.ElementAtOrDefault(i);
    }
}
