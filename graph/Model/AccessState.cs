namespace DxAssistant.Graph.Model;

/// <summary>One way the unit may stand: closed and running, isolated and open, gauges on.</summary>
/// <param name="Who">The least role that may bring the unit there.</param>
public sealed record AccessState(AccessId Id, Role Who);
