namespace DxAssistant.Knowledge.Content.Model;

/// <summary>A document a number or a statement comes from.</summary>
/// <param name="Id">The anchor of its heading on the page of sources.</param>
/// <param name="Title">The heading.</param>
/// <param name="About">Edition, place, and what was confirmed or is from memory.</param>
public sealed record Source(string Id, Passage Title, Passage About);
