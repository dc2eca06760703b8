using DxAssistant.Graph.Planning.Trees;

namespace DxAssistant.Knowledge.Pictures.Plans;

/// <summary>What a page shows of a walk, and where.</summary>
/// <param name="Tree">The steps that it has room for.</param>
/// <param name="First">The first of them; all have their places.</param>
internal sealed record WalkLayout(WalkNode Tree, WalkStep First, WalkBox Box)
{
    public double Left(WalkStep step) => step.Column * (Box.Width + WalkPacking.Gap);
}
