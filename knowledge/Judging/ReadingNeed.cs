using DxAssistant.Knowledge.Quantities;

namespace DxAssistant.Knowledge.Judging;

/// <summary>One reading a judge wants.</summary>
/// <param name="Name">What the judge calls it: <c>resistance</c>, <c>U-V</c>.</param>
/// <param name="Kind">Null when any kind will do, but all readings and limits must share one.</param>
public sealed record ReadingNeed(string Name, QuantityKind? Kind);
