namespace DxAssistant.Cases.Brought;

/// <summary>What became of turns that were brought. There are exactly five ends.</summary>
public abstract record BroughtAnswer
{
    private BroughtAnswer() { }

    /// <summary>All of them are on disk.</summary>
    /// <param name="Last">The last sequence number of the case now.</param>
    /// <param name="Added">How many of them were not there before.</param>
    public sealed record Taken(long Last, int Added) : BroughtAnswer;

    /// <summary>Somebody else went on with the case meanwhile; nothing was appended.</summary>
    public sealed record Crossed(long Last) : BroughtAnswer;

    /// <summary>The content they were worked out on is not known here; nothing was appended.</summary>
    public sealed record UnknownContent(string Version) : BroughtAnswer;

    /// <summary>A turn was said by somebody else than who brings it; nothing was appended.</summary>
    public sealed record OfAnother(string Who) : BroughtAnswer;

    /// <summary>A turn is not what its content says to the messages before it; nothing was appended.</summary>
    public sealed record DoesNotFollow(string TurnId) : BroughtAnswer;
}
