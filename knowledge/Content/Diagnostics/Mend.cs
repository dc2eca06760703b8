namespace DxAssistant.Knowledge.Content;

/// <summary>The one obvious way to put a diagnostic right: other words in the place of a stretch of one line.</summary>
/// <param name="At">What is taken out; nothing when its length is 0.</param>
/// <param name="Text">What is put there instead; one line at most.</param>
public sealed record Mend(SourceSpan At, string Text);
