using System.Collections.Immutable;

namespace DxAssistant.Conversation.Replies;

/// <summary>One sentence or short passage of a reply.</summary>
/// <param name="Kind">What it is to the reader.</param>
/// <param name="Text">Plain text.</param>
/// <param name="From">
/// Where it comes from, the sentence first and then what was put into its slots; never empty.
/// </param>
/// <param name="Verdict">The figures behind the text when it states a verdict.</param>
/// <param name="Pictures">The same drawn; null when there is no picture of it.</param>
/// <param name="Why">The figures behind the text when it says why a step is taken.</param>
public sealed record Segment(
    SegmentKind Kind,
    string Text,
    ImmutableArray<Provenance> From,
    VerdictFigures? Verdict = null,
    ImmutableArray<Picture>? Pictures = null,
    WhyFigures? Why = null)
{
    /// <summary>The language of the text when it is not that of the case: no page says it there.</summary>
    public string? Language { get; init; }

    /// <summary>The evidence behind the text when it says how likely one fault is; else null.</summary>
    public LedgerFigures? Ledger { get; init; }
}
