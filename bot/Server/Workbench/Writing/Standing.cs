namespace DxAssistant.Server.Workbench.Writing;

/// <summary>How a proposal stands against the pages.</summary>
internal enum Standing
{
    /// <summary>The pages are still those it began from.</summary>
    Fits,

    /// <summary>A page changed since, so the patch may not apply.</summary>
    Overtaken,

    /// <summary>The pages read as proposed.</summary>
    InPlace,

    /// <summary>It was taken back.</summary>
    TakenBack,
}
