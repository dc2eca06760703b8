namespace DxAssistant.Knowledge.Content.Model;

/// <summary>How long a class of parts is covered.</summary>
/// <param name="Class">The class, or <c>every other part</c>.</param>
/// <param name="Months">Without registration, or registered late.</param>
/// <param name="RegisteredMonths">Registered in time.</param>
public sealed record PartTerm(Passage Class, int Months, int RegisteredMonths, Source Source);
