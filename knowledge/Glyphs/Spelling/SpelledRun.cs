namespace DxAssistant.Knowledge.Glyphs.Spelling;

/// <summary>Characters spelled one after the other.</summary>
/// <param name="Text">As said, letters in the case that was typed.</param>
/// <param name="Sure">A letter or digit of it can hardly be an everyday word.</param>
internal sealed record SpelledRun(string Text, bool Sure, Rank Rank)
{
    /// <summary>Whether no other code of the message is meant as much.</summary>
    public bool Alone { get; init; } = true;
}
