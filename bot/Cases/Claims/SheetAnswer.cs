namespace DxAssistant.Cases.Claims;

/// <summary>A sheet, or why a case gives none.</summary>
public abstract record SheetAnswer
{
    private SheetAnswer() { }

    public sealed record Built(ClaimSheet Sheet) : SheetAnswer;

    /// <param name="Why">A line a person can act on.</param>
    public sealed record None(string Why) : SheetAnswer;
}
