namespace DxAssistant.Cases.Jobs;

/// <summary>Somebody who works on a case.</summary>
/// <param name="As">What they were when they joined.</param>
public sealed record JobHand(string Name, string As);
