using DxAssistant.Graph.Model;

namespace DxAssistant.Knowledge.Content.Model;

/// <summary>An answer that somebody with a symptom gives to a clarifying question.</summary>
public sealed record ToldBy(SymptomId Symptom, string Answer);
