using System.Collections.Immutable;

namespace DxAssistant.Conversation.Replies;

/// <summary>What moved the odds of one fault against all the others.</summary>
/// <param name="Fault">Its id.</param>
/// <param name="Start">
/// How likely it was before any of the evidence, 0 to 1: its logarithm of odds and the weights add up to that of now.
/// </param>
/// <param name="Probability">How likely it is now, 0 to 1.</param>
/// <param name="Lines">One for each piece of evidence, in the order it came.</param>
public sealed record LedgerFigures(string Fault, double Start, double Probability, ImmutableArray<LedgerFigure> Lines);
