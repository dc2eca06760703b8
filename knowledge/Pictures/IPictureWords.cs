namespace DxAssistant.Knowledge.Pictures;

/// <summary>Where the words of a picture come from, so that none stands in the code that draws.</summary>
public interface IPictureWords
{
    /// <summary>A phrase with its slots filled.</summary>
    string Say(string phrase, params ReadOnlySpan<(string Slot, string Text)> slots);
}
