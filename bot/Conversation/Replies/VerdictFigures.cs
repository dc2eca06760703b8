using System.Collections.Immutable;

namespace DxAssistant.Conversation.Replies;

/// <summary>The figures behind a verdict, as text ready to show.</summary>
/// <param name="Verdict">The verdict's name, such as <c>within</c> or <c>open circuit</c>.</param>
/// <param name="Healthy">Whether a healthy unit reads so; null where the verdict alone does not say.</param>
/// <param name="Readings">What was read.</param>
/// <param name="Expected">What a healthy unit reads.</param>
/// <param name="Working">The formula with the numbers put in, one line a step.</param>
/// <param name="Rule">The decision rule.</param>
/// <param name="Source">Where the expectation comes from.</param>
public sealed record VerdictFigures(
    string Verdict,
    bool? Healthy,
    ImmutableArray<ShownReading> Readings,
    ImmutableArray<string> Expected,
    ImmutableArray<string> Working,
    string Rule,
    string Source);
