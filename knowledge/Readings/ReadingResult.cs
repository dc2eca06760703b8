using System.Collections.Immutable;
using DxAssistant.Knowledge.Quantities;

namespace DxAssistant.Knowledge.Readings;

/// <summary>What a message says was read. There are exactly three kinds.</summary>
public abstract record ReadingResult
{
    private ReadingResult() { }

    /// <summary>Every reading in it, each with one meaning.</summary>
    /// <param name="List">In the order said; at least one.</param>
    /// <param name="At">Where in the message each stands, in the same order.</param>
    /// <param name="Unclear">What else may be a reading in it, to be asked about; null if nothing.</param>
    public sealed record Readings(ImmutableArray<Reading> List, ImmutableArray<TextSpan> At, AskBack? Unclear)
        : ReadingResult;

    /// <summary>No reading in it.</summary>
    /// <param name="Reason">One of <see cref="ReadingReason"/>.</param>
    /// <param name="Accepted">Units in which the quantity asked can be given; empty if none was asked.</param>
    public sealed record NotUnderstood(string Reason, ImmutableArray<Unit> Accepted) : ReadingResult;

    /// <summary>It can mean several things, or something that cannot be.</summary>
    /// <param name="Reason">One of <see cref="ReadingReason"/>.</param>
    /// <param name="Meanings">What to offer, likeliest first; empty if nothing can be.</param>
    public sealed record AskBack(string Reason, ImmutableArray<Meaning> Meanings) : ReadingResult;
}
