namespace DxAssistant.Server.Workbench.Comparing;

/// <summary>A stored case that ends otherwise on the new pages.</summary>
/// <param name="Before">Where it ends on the old pages.</param>
/// <param name="After">Where it ends on the new ones.</param>
/// <param name="Turn">
/// The first message after which something else is asked; 0 when the same is asked throughout.
/// </param>
internal sealed record ChangedConclusion(string Case, string Before, string After, int Turn);
