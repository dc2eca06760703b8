using DxAssistant.Knowledge.Content.Syntax;

namespace DxAssistant.Knowledge.Content.Constructs;

/// <summary>One row of a check's outcomes.</summary>
/// <param name="Verdicts">The words of the column <c>Verdict</c>; null when the table has none.</param>
/// <param name="SaidAs">The wordings of the column <c>Said as</c>; null when the table has none.</param>
internal sealed record OutcomeRow(RichText Id, RichText Answer, RichText? Verdicts, RichText? SaidAs);
