namespace DxAssistant.Knowledge.Calculations;

/// <summary>How well a statement is backed.</summary>
public enum CitationStanding
{
    /// <summary>Read in a published source.</summary>
    Published,

    /// <summary>A standard or textbook, quoted from memory; clause numbers need care.</summary>
    FromMemory,

    /// <summary>What the trade does; no source.</summary>
    CommonPractice,
}
