using DxAssistant.Conversation.Replies;

namespace DxAssistant.Cases;

/// <summary>What the desk did with a message. There are exactly three ends.</summary>
public abstract record DeskAnswer
{
    private DeskAnswer() { }

    /// <summary>The turn is on disk.</summary>
    /// <param name="Before">The last sequence number before the turn; 0 for the first.</param>
    /// <param name="Last">The last sequence number of the turn.</param>
    /// <param name="At">When it was stored, UTC.</param>
    /// <param name="Repeated">Whether the turn was there already and its stored reply is given again.</param>
    public sealed record Answered(string CaseId, Reply Reply, long Before, long Last, DateTimeOffset At, bool Repeated)
        : DeskAnswer
    {
        /// <summary>The turn itself; null when it has to be read from the log.</summary>
        public TurnDone? Done { get; init; }
    }

    /// <summary>The case was not any more as the message was meant for; nothing was stored.</summary>
    public sealed record Overtaken(string CaseId) : DeskAnswer;

    /// <summary>There is no such case.</summary>
    public sealed record UnknownCase(string CaseId) : DeskAnswer;
}
