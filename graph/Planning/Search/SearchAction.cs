namespace DxAssistant.Graph.Planning.Search;

/// <summary>One thing to do at a position.</summary>
/// <param name="Check">The check, or −1 for a repair.</param>
/// <param name="Repair">The repair, or −1 for a check.</param>
/// <param name="Access">The access state it is done in.</param>
/// <param name="Price">Minutes from the position's state, getting there and verification included.</param>
internal readonly record struct SearchAction(
    int Check, int Repair, int Access, double Price, int FirstBranch, int BranchCount);
