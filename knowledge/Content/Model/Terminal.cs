namespace DxAssistant.Knowledge.Content.Model;

/// <summary>A terminal or plug of a series.</summary>
public sealed record Terminal(string Mark, Passage What);
