using DxAssistant.Knowledge.Content.Syntax;
using DxAssistant.Knowledge.Judging;

namespace DxAssistant.Knowledge.Content.Constructs;

/// <summary>One row of a check's expected inputs.</summary>
/// <param name="Need">What the calculation wants under this name.</param>
internal sealed record InputRow(InputNeed Need, RichText Name, RichText Value);
