namespace DxAssistant.Knowledge.Search.Gates;

/// <summary>What a message is, as far as its words tell: probabilities that sum to 1.</summary>
/// <param name="Trade">It tells of a unit.</param>
/// <param name="OffTopic">It is talk of something else.</param>
/// <param name="Unsafe">It asks for something dangerous.</param>
/// <param name="Harmless">It tells of something dangerous, and asks for nothing of the kind.</param>
internal readonly record struct Intention(double Trade, double OffTopic, double Unsafe, double Harmless);
