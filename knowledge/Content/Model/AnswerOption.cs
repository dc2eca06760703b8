using System.Collections.Immutable;
using DxAssistant.Graph.Model;
using DxAssistant.Knowledge.Judging;

namespace DxAssistant.Knowledge.Content.Model;

/// <summary>One outcome of a check, as it is offered.</summary>
/// <param name="Verdicts">The verdicts of the calculation that mean this outcome; empty when the check has no
/// readings.</param>
/// <param name="SaidAs">
/// What people say who have done the check already; each wording names the thing and its state.
/// </param>
public sealed record AnswerOption(
    OutcomeId Id, Passage Answer, ImmutableArray<VerdictKind> Verdicts, ImmutableArray<string> SaidAs);
