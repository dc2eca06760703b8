namespace DxAssistant.Knowledge.Content.Model;

/// <summary>Words and the words they stand for.</summary>
public sealed record WordPair(string Words, string Means);
