namespace DxAssistant.Graph.Planning.Search;

/// <summary>Where an action may lead; branches that end the session are left out.</summary>
internal readonly record struct Branch(double Probability, int Position);
