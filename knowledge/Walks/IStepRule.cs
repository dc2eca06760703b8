using DxAssistant.Graph.Planning;

namespace DxAssistant.Knowledge.Walks;

/// <summary>A rule that may put a step in another's place.</summary>
internal interface IStepRule
{
    LaidRule Name { get; }

    /// <summary>Whether the step that gives way is done afterwards; else another way is taken in its place.</summary>
    bool GoesBefore { get; }

    /// <summary>
    /// The minutes that the rule may cost before a step in any case, whatever the pages allow; 0 for most.
    /// </summary>
    double Worth(PlannedStep step) => 0;

    /// <summary>
    /// What could be done instead, best first; the first that costs no more than the rule may is taken.
    /// </summary>
    IEnumerable<PlannedStep> Instead(WalkScene scene, PlannedStep step);
}
