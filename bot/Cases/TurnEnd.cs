namespace DxAssistant.Cases;

/// <summary>How a turn ended, for the figures of a running program.</summary>
public enum TurnEnd
{
    /// <summary>It is in the log.</summary>
    Saved,

    /// <summary>It was in the log already: a client asked again.</summary>
    Repeated,

    /// <summary>Another turn of the same case was first, so it was worked out anew.</summary>
    Overtaken,

    /// <summary>It did not end: working it out or saving it failed.</summary>
    Failed,
}
