using DxAssistant.Graph.Planning;

namespace DxAssistant.Graph.Tests.Planning;

internal static class Steps
{
    /// <summary>The id of the check or repair; "nothing" when there is none.</summary>
    public static string Name(this PlannedStep step) => step switch
    {
        PlannedStep.DoCheck check => check.Check.Value,
        PlannedStep.DoRepair repair => repair.Repair.Value,
        _ => "nothing",
    };
}
