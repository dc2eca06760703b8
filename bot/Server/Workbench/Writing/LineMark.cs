namespace DxAssistant.Server.Workbench.Writing;

/// <summary>What becomes of a line.</summary>
internal enum LineMark
{
    /// <summary>It stays.</summary>
    Kept,

    /// <summary>It is taken out.</summary>
    Out,

    /// <summary>It is put in.</summary>
    In,
}
