namespace DxAssistant.Browser.Tests;

/// <summary>What kind of browser a visit is made with.</summary>
internal enum BrowserKind
{
    /// <summary>As it comes.</summary>
    Plain,

    /// <summary>Of a reader who has text at twice the size.</summary>
    LargeText,

    /// <summary>With windows, for what the form without them has no notion of.</summary>
    Windowed,
}
