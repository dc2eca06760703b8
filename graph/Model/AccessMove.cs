namespace DxAssistant.Graph.Model;

/// <summary>The direct way from one access state to another.</summary>
/// <param name="Minutes">0 or more.</param>
public sealed record AccessMove(AccessId From, AccessId To, double Minutes);
