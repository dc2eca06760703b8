using DxAssistant.Graph.Planning;

namespace DxAssistant.Graph.Testability;

/// <summary>How a symptom is walked.</summary>
/// <param name="Situation">Who is at the unit, how it stands, and what is not asked at this symptom.</param>
/// <param name="Plain">The plan alone.</param>
/// <param name="Laid">The plan with the rules over it, as it is really walked.</param>
public sealed record WalkedBy(Situation Situation, IPolicy Plain, IPolicy Laid);
