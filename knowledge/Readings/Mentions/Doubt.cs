namespace DxAssistant.Knowledge.Readings.Mentions;

/// <summary>Why a mention cannot be taken as a reading even when its number and unit are plain.</summary>
internal enum Doubt
{
    None,

    /// <summary>It is one end of a range.</summary>
    Range,

    /// <summary>It is only a limit: over 500.</summary>
    Limit,

    /// <summary>It may belong to something else: a question, a negation, another thing counted.</summary>
    Unsure,

    /// <summary>No unit, and nothing that says which.</summary>
    NoUnit,

    /// <summary>Thousands parted by a space, or two values.</summary>
    Separator,

    /// <summary>A lone 1 of a resistance.</summary>
    OverRange,

    /// <summary>Several labels and nothing that says which.</summary>
    WhichOne,
}
