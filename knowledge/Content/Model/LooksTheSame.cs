using DxAssistant.Graph.Model;

namespace DxAssistant.Knowledge.Content.Model;

/// <summary>A fault that looks like this one, and how to tell them apart.</summary>
public sealed record LooksTheSame(FaultId Fault, Passage Text);
