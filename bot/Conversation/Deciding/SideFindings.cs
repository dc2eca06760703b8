using System.Collections.Immutable;
using DxAssistant.Conversation.State;
using DxAssistant.Graph;
using DxAssistant.Graph.Model;
using DxAssistant.Knowledge.Content;
using DxAssistant.Knowledge.Content.Model;

namespace DxAssistant.Conversation.Deciding;

/// <summary>
/// What was seen of a second trouble while the first is mended: a blower wheel caked with dust beside a blocked filter.
/// The belief takes the two for rivals, since it knows of one fault; neither is lost for that.
/// </summary>
internal static class SideFindings
{
    /// <summary>
    /// The results that prove, by their fault's page, a fault that a repair does not cure, and that no fault which it
    /// cures would explain; in the order they came.
    /// </summary>
    public static ImmutableArray<(SeenResult Result, CheckPage Check)> Beside(Library library, CaseView view,
        RepairId repair)
    {
        if (library.Graph.Find(repair)?.Fixes is not { } cured) return [];
        FaultId[] others = [.. view.Belief.Ranked.Where(ranked => ranked.Probability > 0 && !cured.Contains(ranked.Id))
            .Select(ranked => ranked.Id)];
        return
        [
            .. view.Results.Select(result => (Result: result, Check: library.Checks[new CheckId(result.Check)]))
                .Where(seen => others.Any(fault => Proves(library, seen.Result, seen.Check, fault)))
                .Where(seen => !cured.Any(fault => Explains(library, seen.Result, seen.Check, fault))),
        ];
    }

    /// <summary>The belief as if none of them had been seen.</summary>
    public static Belief Without(Library library, CaseView view, RepairId repair)
    {
        CheckId[] beside = [.. Beside(library, view, repair).Select(seen => seen.Check.Id)];
        return beside.Length == 0 ? view.Belief
            : view.BeliefAfter(
                view.Evidence.Where(one => one is not Evidence.OutcomeSeen seen || !beside.Contains(seen.Check)));
    }

    private static bool Proves(Library library, SeenResult result, CheckPage page, FaultId fault) =>
        fault != FaultId.NoneOfThese && library.Faults[fault].Demanded.Contains(page.Id)
            && Explains(library, result, page, fault);

    private static bool Explains(Library library, SeenResult result, CheckPage page, FaultId fault) =>
        result.Outcome is not null
        && LikelihoodRatio.Of(library.Graph.Find(page.Id)!, fault, result.Weights) >= library.Settings.Beside;
}
