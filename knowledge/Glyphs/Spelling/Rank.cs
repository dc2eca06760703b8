namespace DxAssistant.Knowledge.Glyphs.Spelling;

/// <summary>Which of several codes of a message is meant; the first before the others.</summary>
internal enum Rank
{
    /// <summary>"now it's b4"</summary>
    Now,

    /// <summary>Nothing is said of when.</summary>
    Shown,

    /// <summary>"it was E5"</summary>
    Before,

    /// <summary>"not b6"</summary>
    Denied,
}
