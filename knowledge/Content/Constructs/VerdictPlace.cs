using DxAssistant.Knowledge.Content.Syntax;
using DxAssistant.Knowledge.Judging;

namespace DxAssistant.Knowledge.Content.Constructs;

/// <summary>One verdict as an outcome of a check names it.</summary>
internal sealed record VerdictPlace(Page Page, IJudge Judge, string Outcome, string Word, TextSpan Span);
