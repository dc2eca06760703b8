namespace DxAssistant.Knowledge.Pictures.Plans;

/// <summary>One line of the words of a picture.</summary>
/// <param name="Depth">How far it is set in, from 0.</param>
public sealed record PlannedLine(int Depth, string Text);
