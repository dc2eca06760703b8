namespace DxAssistant.Knowledge.Pictures.Plans;

/// <summary>How well the checks tell a fault from the others of a symptom.</summary>
internal enum Coverage
{
    /// <summary>No check alone does.</summary>
    Thin,

    /// <summary>A check makes it likelier.</summary>
    Leans,

    /// <summary>A check decides, without a reading.</summary>
    Decided,

    /// <summary>A check with readings decides.</summary>
    Measured,
}
