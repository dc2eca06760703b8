namespace DxAssistant.Knowledge.Content.Syntax;

/// <summary>One word or number of the front matter.</summary>
internal sealed record FrontMatterValue(string Text, TextSpan Span);
