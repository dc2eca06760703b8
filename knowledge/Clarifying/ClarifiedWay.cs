using System.Collections.Immutable;
using DxAssistant.Graph.Model;
using DxAssistant.Knowledge.Content.Model;

namespace DxAssistant.Knowledge.Clarifying;

/// <summary>An answer and the symptoms that are left after it, likeliest first.</summary>
public sealed record ClarifiedWay(QuestionAnswer Answer, ImmutableArray<SymptomId> Left);
