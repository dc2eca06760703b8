namespace DxAssistant.Knowledge.Warranty;

/// <summary>Whether something is paid under the terms of coverage.</summary>
public enum CoverageAnswer
{
    /// <summary>It is paid.</summary>
    Covered,

    /// <summary>It is not paid.</summary>
    NotCovered,

    /// <summary>Something is missing that decides it.</summary>
    Unsettled,
}
