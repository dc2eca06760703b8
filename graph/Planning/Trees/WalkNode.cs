using System.Collections.Immutable;
using DxAssistant.Graph.Model;

namespace DxAssistant.Graph.Planning.Trees;

/// <summary>A place in the tree of a walk.</summary>
/// <param name="Step">What is done there; null where the tree was cut.</param>
/// <param name="Share">Of all walks, how many come here; above 0, at most 1.</param>
/// <param name="From">The access state in which the unit stands when one comes here.</param>
/// <param name="Likeliest">The likeliest fault there; at a repair, of those that it cures.</param>
/// <param name="Belief">How likely it is there, 0 to 1.</param>
/// <param name="Order">Steps are numbered as the tree grew, from 0; −1 where it was cut.</param>
public sealed record WalkNode(
    PlannedStep? Step, double Share, AccessId From, FaultId Likeliest, double Belief, int Order,
    ImmutableArray<WalkBranch> Branches)
{
    /// <summary>How many steps are written down.</summary>
    public int Steps => Step is null ? 0 : 1 + Branches.Sum(branch => branch.Next.Steps);

    /// <summary>How many of them are checks.</summary>
    public int Checks =>
        (Step is PlannedStep.DoCheck ? 1 : 0) + Branches.Sum(branch => branch.Next.Checks);

    /// <summary>Of all walks, how many leave the tree before their end; 0 to 1.</summary>
    public double CutShare => Step is null ? Share : Branches.Sum(branch => branch.Next.CutShare);

    /// <summary>
    /// Of all walks, how many leave the tree before their end with a wrong fault as the likeliest; 0 to 1.
    /// </summary>
    public double Doubt => Step is null ? Share * (1 - Belief) : Branches.Sum(branch => branch.Next.Doubt);

    /// <summary>The same tree as it was when it had so many steps.</summary>
    /// <param name="steps">0 or more.</param>
    public WalkNode Trimmed(int steps) => Step is null || Order >= steps
        ? this with { Step = null, Order = -1, Branches = [] }
        : this with { Branches = [.. Branches.Select(branch => branch with { Next = branch.Next.Trimmed(steps) })] };

    /// <summary>The same tree with some of its steps only; what follows a step that is left out goes with it.</summary>
    /// <param name="orders">The <see cref="Order"/> of each step that stays.</param>
    public WalkNode Kept(IReadOnlySet<int> orders) => Step is null || !orders.Contains(Order)
        ? this with { Step = null, Order = -1, Branches = [] }
        : this with { Branches = [.. Branches.Select(branch => branch with { Next = branch.Next.Kept(orders) })] };
}
