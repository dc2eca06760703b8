using System.Collections.Immutable;
using DxAssistant.Conversation.Messages;
using DxAssistant.Conversation.State;
using DxAssistant.Graph;
using DxAssistant.Graph.Model;
using DxAssistant.Knowledge.Content;

namespace DxAssistant.Conversation.Deciding;

/// <summary>
/// Repairs that an owner is not sent to, because the check that shows their fault was left out and nothing else found
/// it.
/// </summary>
/// <remarks>
/// What can hurt nobody and costs nothing may be tried all the same by who was not sure what the check shows; who could
/// not get to what is looked at cannot mend it either.
/// </remarks>
internal sealed class UnseenRepairs(Library library)
{
    // An answer that is as likely as not with the fault, or more.
    private const double Usual = 0.5;

    private readonly ImmutableDictionary<RepairId, ImmutableArray<Showing>> _showing = library.Graph.Repairs
        .Where(repair => repair.Who.Rank == 0 && repair.Id != RepairId.HandOver)
        .ToImmutableDictionary(repair => repair.Id, repair => Showings(library, repair));

    /// <summary>Those of a case; none for who repairs units for a living.</summary>
    public IEnumerable<RepairId> Of(CaseView view) => view.Role.Rank > 0 || view.State.PassedOver.IsEmpty
        ? []
        : _showing.Where(known => IsUnseen(view, known.Key, known.Value)).Select(known => known.Key);

    /// <summary>
    /// The checks left out that would show best what the repairs of a case cure, that of the likeliest first.
    /// </summary>
    public ImmutableArray<CheckId> LeftOut(CaseView view) =>
    [
        .. Of(view).OrderByDescending(repair => library.Graph.Find(repair)!.Fixes.Sum(view.Belief.ProbabilityOf))
            .ThenBy(repair => repair)
            .Select(repair => _showing[repair].Where(showing => view.State.PassedOver.ContainsKey(showing.Check.Value))
                .MaxBy(showing => showing.Times)!.Check).Distinct(),
    ];

    /// <summary>
    /// Whether an owner saw what the repair cures, and it takes no part: it is put right before anything else is asked.
    /// </summary>
    public bool IsSeen(CaseView view, RepairId repair) => view.Role.Rank == 0 && library.Repairs[repair].Parts.IsEmpty
        && _showing.TryGetValue(repair, out ImmutableArray<Showing> showing)
        && showing.MaxBy(it => it.Times) is { } best
        && view.Results.Any(result => result.Check == best.Check.Value && Shows(result, repair));

    // What was seen fits the fault so much better than a unit without it.
    private bool Shows(SeenResult result, RepairId repair)
    {
        Check check = library.Graph.Find(new CheckId(result.Check))!;
        return library.Graph.Find(repair)!.Fixes.Any(
            fault => LikelihoodRatio.Of(check, fault, result.Weights) >= library.Settings.Shows);
    }

    // Seen is what a check at least as telling as the one left out has looked at.
    private bool IsUnseen(CaseView view, RepairId repair, ImmutableArray<Showing> showing)
    {
        double seen = showing.Where(it => view.Results.Any(result => result.Check == it.Check.Value))
            .Select(it => it.Times).DefaultIfEmpty().Max();
        ImmutableArray<CommandWord> reasons =
        [
            .. showing.Where(it => it.Times > seen && view.State.PassedOver.ContainsKey(it.Check.Value))
                .Select(it => view.State.PassedOver[it.Check.Value]),
        ];
        return !reasons.IsEmpty && !(library.Repairs[repair].MayBeUnseen && !reasons.Contains(CommandWord.Cannot))
            && !IsFound(view, repair);
    }

    private bool IsFound(CaseView view, RepairId repair) => library.Graph.Find(repair) is { } node
        && CuredFaults.Of(view.Belief, node, library.Settings) is { All.IsEmpty: false } cured
        && cured.Share >= library.Settings.Found;

    // Where a unit without a fault has a row of its own, a check shows faults that have none.
    private static ImmutableArray<Showing> Showings(Library library, Repair repair) =>
    [
        .. from check in library.Graph.ChecksOf(repair.Fixes.Append(FaultId.NoneOfThese))
           where check.Who.Rank == 0
           let times = repair.Fixes.Max(fault => Times(check, fault))
           where times >= library.Settings.Shows
           select new Showing(check.Id, times),
    ];

    // How many times better the answer that shows a fault best fits it than a unit without it.
    private static double Times(Check check, FaultId fault) => check.Row(fault)
        .Select((with, place) => with >= Usual ? LikelihoodRatio.Of(check, fault, place) : 0).Max();

    private sealed record Showing(CheckId Check, double Times);
}
