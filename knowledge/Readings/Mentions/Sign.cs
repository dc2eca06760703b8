namespace DxAssistant.Knowledge.Readings.Mentions;

/// <summary>The sign before a number.</summary>
internal enum Sign
{
    Plus,
    Minus,

    /// <summary>A dash that is a minus or parts words.</summary>
    Unclear,
}
