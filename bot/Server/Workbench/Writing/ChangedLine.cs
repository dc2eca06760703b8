namespace DxAssistant.Server.Workbench.Writing;

/// <summary>A line of the page before, after, or both.</summary>
/// <param name="Text">With its line end, where it has one.</param>
internal readonly record struct ChangedLine(LineMark Mark, string Text);
