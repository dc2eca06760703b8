using DxAssistant.Knowledge.Quantities;

namespace DxAssistant.Knowledge.Judging;

/// <summary>One input a judge wants beside the readings.</summary>
/// <param name="Name">As in the first column of <c>## Expected</c>.</param>
/// <param name="Kind">Of a number; null when the form is another, or when it must be of the kind of the
/// reading.</param>
/// <param name="Required">Without it there is no verdict.</param>
/// <param name="Meaning">What it means, in a few words, for the author of a page.</param>
public sealed record InputNeed(string Name, InputForm Form, QuantityKind? Kind, bool Required, string Meaning);
