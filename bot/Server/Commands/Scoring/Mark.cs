namespace DxAssistant.Server.Commands.Scoring;

/// <summary>How good an answer was.</summary>
internal enum Mark
{
    /// <summary>What was expected.</summary>
    Right,

    /// <summary>It asked back where an answer was expected: a delay, not a mistake.</summary>
    AskedBack,

    /// <summary>An answer that was not expected, given without a doubt.</summary>
    Wrong,
}
