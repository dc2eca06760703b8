using DxAssistant.Graph.Model;

namespace DxAssistant.Knowledge.Content.Model;

/// <summary>A code a series can show.</summary>
/// <param name="Display">As it is shown.</param>
/// <param name="Look"><c>steady</c>, <c>flashing</c>, or a count of blinks, or one for each lamp.</param>
public sealed record DisplayCode(string Display, string Look, SymptomId Symptom, Passage Means);
