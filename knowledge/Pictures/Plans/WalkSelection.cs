using DxAssistant.Graph.Planning.Trees;

namespace DxAssistant.Knowledge.Pictures.Plans;

/// <summary>Keeps as much of a tree as a page holds, the likeliest places first.</summary>
internal static class WalkSelection
{
    /// <param name="fits">Whether the page holds a tree; the first step alone is kept whatever it says.</param>
    public static WalkNode Choose(WalkNode whole, Func<WalkNode, bool> fits)
    {
        if (fits(whole)) return whole;
        HashSet<int> kept = [0];
        foreach (int order in Orders(whole).Order().Skip(1))
        {
            int steps = whole.Kept(kept).Steps;
            kept.Add(order);
            WalkNode tried = whole.Kept(kept);
            if (tried.Steps == steps || !fits(tried)) kept.Remove(order);
        }

        return whole.Kept(kept);
    }

    private static IEnumerable<int> Orders(WalkNode node) =>
        node.Step is null ? [] : node.Branches.SelectMany(branch => Orders(branch.Next)).Prepend(node.Order);
}
