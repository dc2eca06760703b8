namespace DxAssistant.Server.Commands.Scoring;

/// <summary>One line of a scored file.</summary>
/// <param name="Said">The words that were answered.</param>
/// <param name="Expected">In one line, for people.</param>
/// <param name="Answered">In one line, for people.</param>
internal sealed record Marked(Mark Mark, string Said, string Expected, string Answered);
