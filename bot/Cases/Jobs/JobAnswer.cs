namespace DxAssistant.Cases.Jobs;

/// <summary>What became of something to be written down about a job. There are exactly three ends.</summary>
public abstract record JobAnswer
{
    private JobAnswer() { }

    /// <summary>It is on disk.</summary>
    public sealed record Saved(Job Job) : JobAnswer;

    /// <summary>Nothing was written down.</summary>
    /// <param name="Why">In words for the person.</param>
    /// <param name="Meant">The serial number that was likely meant; null for anything else.</param>
    public sealed record Refused(string Why, string? Meant = null) : JobAnswer;

    /// <summary>There is no such case.</summary>
    public sealed record Unknown : JobAnswer;
}
