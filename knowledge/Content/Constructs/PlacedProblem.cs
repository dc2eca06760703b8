using DxAssistant.Knowledge.Content.Syntax;

namespace DxAssistant.Knowledge.Content.Constructs;

/// <summary>Why a page of numbers (a sensor curve, a meter) cannot be read, and where.</summary>
internal sealed record PlacedProblem(TextSpan At, string Message);
