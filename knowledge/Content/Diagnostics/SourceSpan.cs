namespace DxAssistant.Knowledge.Content;

/// <summary>A stretch of one line of a page.</summary>
/// <param name="Path">Path inside the content folder.</param>
/// <param name="Line">Line, from 1.</param>
/// <param name="Column">Column in characters as a reader counts them (text elements), from 1.</param>
/// <param name="Length">Characters marked, 0 or more; 0 marks the place itself.</param>
public sealed record SourceSpan(string Path, int Line, int Column, int Length);
