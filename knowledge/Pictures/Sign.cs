namespace DxAssistant.Knowledge.Pictures;

/// <summary>What a line of the key explains, and how that looks in the drawing.</summary>
internal enum Sign
{
    /// <summary>A filled point: what was found.</summary>
    Found,

    /// <summary>An open point.</summary>
    Open,

    /// <summary>A shaded stretch: what is expected.</summary>
    Band,

    /// <summary>A bar with ends: how far the reading may be off.</summary>
    Doubt,

    /// <summary>A full line.</summary>
    Line,

    /// <summary>A dashed line: how it should be.</summary>
    Dashed,

    /// <summary>A bar with rungs: the odd one.</summary>
    Odd,

    /// <summary>A distance between two points.</summary>
    Distance,
}
