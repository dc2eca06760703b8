using DxAssistant.Graph.Model;

namespace DxAssistant.Graph.Testability;

/// <summary>Two faults that may be taken for one another though every check that may be done was done.</summary>
/// <param name="One">The first by id.</param>
/// <param name="Error">How often the best decision between the two errs when they are equally likely, 0 to 0.5.</param>
public sealed record MistakenPair(FaultId One, FaultId Other, double Error);
