namespace DxAssistant.Graph.Planning;

/// <summary>When a session ends.</summary>
public enum Objective
{
    /// <summary>A repair was verified.</summary>
    Repair,

    /// <summary>One fault is left; nothing is repaired.</summary>
    Isolate,
}
