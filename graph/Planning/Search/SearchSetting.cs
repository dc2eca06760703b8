namespace DxAssistant.Graph.Planning.Search;

/// <summary>How a search spends its work in a large problem; small ones are searched to their end either way.</summary>
/// <param name="Leaning">
/// How far from the lower bound to the upper an action is judged, 0 to 1: at 0 the lower bound leads.
/// </param>
/// <param name="Listed">How many checks are kept at a position to be tried at its successors; 1 or more.</param>
internal sealed record SearchSetting(double Leaning, int Listed)
{
    /// <summary>What conversations use; tests/Benchmarks/results/settings.md compares it with others.</summary>
    /// <remarks>
    /// Leaning 0 takes perhaps a percent fewer minutes on the shipped content, but asks for more checks where every
    /// reading is healthy.
    /// </remarks>
    public static SearchSetting Usual { get; } = new(Leaning: 0.5, Listed: 24);
}
