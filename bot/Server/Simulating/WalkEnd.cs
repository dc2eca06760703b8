namespace DxAssistant.Server.Simulating;

/// <summary>How a simulated walk ended.</summary>
internal enum WalkEnd
{
    /// <summary>The true fault was found and its repair verified, or rightly nothing was found.</summary>
    Proven,

    /// <summary>Left to a person with another role, as the true fault needs.</summary>
    Booked,

    /// <summary>Left to a person with another role although this one could have repaired it.</summary>
    BookedForNothing,

    /// <summary>Ended as none of the faults, or intermittent, although there was a fault.</summary>
    Missed,

    /// <summary>No end was reached.</summary>
    Stuck,
}
