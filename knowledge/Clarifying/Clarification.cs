using System.Collections.Immutable;
using DxAssistant.Knowledge.Content.Model;

namespace DxAssistant.Knowledge.Clarifying;

/// <summary>A clarifying question and where each of its answers leads.</summary>
/// <param name="Ways">Answers that are left out lead nowhere.</param>
/// <param name="Bits">The information that its answer is expected to give.</param>
public sealed record Clarification(QuestionPage Question, ImmutableArray<ClarifiedWay> Ways, double Bits);
