namespace DxAssistant.Cases.WorkList;

/// <summary>What comes first in a work list.</summary>
public enum WorkOrder
{
    /// <summary>Last added to.</summary>
    Newest,

    /// <summary>Added to longest ago: what waits longest.</summary>
    Oldest,

    /// <summary>By series, then last added to.</summary>
    Series,

    /// <summary>By the likeliest fault, then last added to.</summary>
    Fault,
}
