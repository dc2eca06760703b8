using DxAssistant.Knowledge.Content.Syntax;

namespace DxAssistant.Knowledge.Content.Constructs;

/// <summary>Why a sensor curve cannot be read, and where.</summary>
internal sealed record CurveProblem(TextSpan At, string Message);
