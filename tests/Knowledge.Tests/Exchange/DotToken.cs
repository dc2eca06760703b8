namespace DxAssistant.Knowledge.Tests.Exchange;

/// <summary>A word of a text in the DOT language.</summary>
/// <param name="Text">What it says, a quoted string without its quotes.</param>
/// <param name="IsId">A name, a number or a quoted string; else a keyword or a mark.</param>
internal readonly record struct DotToken(string Text, bool IsId);
