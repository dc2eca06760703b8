namespace DxAssistant.Knowledge.Judging;

/// <summary>What readings say about their check.</summary>
public enum VerdictKind
{
    /// <summary>As a healthy unit reads.</summary>
    Within,

    /// <summary>Below what a healthy unit reads.</summary>
    Low,

    /// <summary>Above what a healthy unit reads.</summary>
    High,

    /// <summary>Readings that should be equal are not.</summary>
    Unequal,

    /// <summary>No connection where there should be one, or a contact that is open.</summary>
    OpenCircuit,

    /// <summary>A connection where there should be none, or near to zero.</summary>
    ShortCircuit,

    /// <summary>A contact that is closed.</summary>
    Closed,

    /// <summary>No voltage to speak of where there should be one.</summary>
    Absent,

    /// <summary>The other way round: what should be the warmer is the colder.</summary>
    Reversed,

    /// <summary>The uncertainty of the readings is too large to decide.</summary>
    TooCloseToCall,

    /// <summary>No such reading can be: wrong quantity, wrong sign or outside all physics of the check.</summary>
    Impossible,
}
