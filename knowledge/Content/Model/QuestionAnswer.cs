namespace DxAssistant.Knowledge.Content.Model;

/// <summary>One answer to a clarifying question.</summary>
/// <param name="Id">Unique on its page.</param>
public sealed record QuestionAnswer(string Id, Passage Shown);
