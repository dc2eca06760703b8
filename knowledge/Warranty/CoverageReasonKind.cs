namespace DxAssistant.Knowledge.Warranty;

/// <summary>What one reason of a decision about coverage says.</summary>
public enum CoverageReasonKind
{
    /// <summary>The fault is a condition of the site, not a failed part.</summary>
    SiteCondition,

    /// <summary>The terms exclude the fault.</summary>
    Excluded,

    /// <summary>The day from which the months run is not known.</summary>
    StartUnknown,

    /// <summary>The failure lies before the day from which the months run.</summary>
    FailedBeforeStart,

    /// <summary>Registered in time: the longer months count.</summary>
    RegisteredInTime,

    /// <summary>Registered too late: the shorter months count.</summary>
    RegisteredLate,

    /// <summary>Not registered: the shorter months count.</summary>
    NotRegistered,

    /// <summary>The part failed within its months.</summary>
    PartInTerm,

    /// <summary>The part failed after its months.</summary>
    PartOutOfTerm,

    /// <summary>The repair is paid so many minutes.</summary>
    LabourAllowed,

    /// <summary>The months in which work is paid are over.</summary>
    LabourOutOfTerm,

    /// <summary>The terms list no minutes for the repair.</summary>
    NoAllowance,
}
