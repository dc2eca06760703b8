namespace DxAssistant.Benchmarks.Fitting;

/// <summary>One message as a gate sees it.</summary>
/// <param name="Set">The set that it stands in.</param>
/// <param name="Text">What was said.</param>
/// <param name="Signs">How strong each sign is.</param>
/// <param name="Holds">Whether the gate must hold it back.</param>
/// <param name="Weight">How many lines it counts for.</param>
internal sealed record FitLine(string Set, string Text, double[] Signs, bool Holds, double Weight);
