namespace DxAssistant.Server.Workbench.Writing;

/// <summary>A page as somebody is writing it, or taking it out.</summary>
/// <param name="Text">Null when the page is taken out.</param>
/// <param name="Base">The mark of the page it began from; empty for a new page.</param>
/// <param name="Gone">Whether the page is taken out: said, so that no page goes because its text was forgotten.</param>
internal sealed record PageInHand(string Path, string? Text = null, string? Base = null, bool Gone = false)
{
    /// <summary>Whether it was sent whole: a path, and either a text or that the page goes.</summary>
    public bool IsWhole => Path is not null && (Text is null) == Gone;
}
