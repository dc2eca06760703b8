using System.Collections.Immutable;
using DxAssistant.Knowledge.Search.Terms;

namespace DxAssistant.Knowledge.Search.Clauses;

/// <summary>A message with what it rules out taken apart.</summary>
/// <param name="Complaint">Every token that is not ruled out, in order.</param>
internal sealed record ClauseReading(ImmutableArray<Token> Complaint, ImmutableArray<RuledOut> RuledOut);
