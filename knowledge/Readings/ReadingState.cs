namespace DxAssistant.Knowledge.Readings;

/// <summary>What a meter showed.</summary>
public enum ReadingState
{
    /// <summary>A number.</summary>
    Number,

    /// <summary>No connection between the leads: OL, infinite, "open".</summary>
    OpenCircuit,

    /// <summary>Said to be a short, with no number given.</summary>
    ShortCircuit,
}
