using System.Collections.Immutable;
using DxAssistant.Conversation.State;
using DxAssistant.Graph.Model;
using DxAssistant.Knowledge.Content;
using DxAssistant.Knowledge.Content.Model;

namespace DxAssistant.Conversation;

/// <summary>What one earlier repair does to the odds, by what the pages say.</summary>
/// <param name="Row">The row of the pages that counts.</param>
/// <param name="Same">The faults that the repair cures.</param>
/// <param name="Left">The faults that such work may leave behind.</param>
internal sealed record EarlierEffect(EarlierWork Work, EarlierOdds Row, ImmutableArray<FaultId> Same,
    ImmutableArray<FaultId> Left)
{
    /// <summary>The effects of all earlier work; of a repair made twice the later one counts.</summary>
    public static ImmutableArray<EarlierEffect> Of(Library library, CaseState state) =>
    [
        .. state.Earlier.DistinctBy(work => work.Repair).Select(work => Of(library, work)).OfType<EarlierEffect>(),
    ];

    /// <summary>
    /// Times the odds of each fault; a fault of both kinds is one that the work may have left behind.
    /// </summary>
    public ImmutableSortedDictionary<FaultId, double> Odds =>
        Same.Except(Left).Select(fault => KeyValuePair.Create(fault, Row.SamePart))
        .Concat(Left.Select(fault => KeyValuePair.Create(fault, Row.LeftByWork))).ToImmutableSortedDictionary();

    private static EarlierEffect? Of(Library library, EarlierWork work)
    {
        var repair = new RepairId(work.Repair);
        if (library.Graph.Find(repair) is not { } made) return null;
        return library.EarlierOdds.FirstOrDefault(row => work.Days <= row.Within) is { } row
            ? new EarlierEffect(work, row, [.. made.Fixes.Order()],
                [.. library.Faults.Values.Where(fault => fault.LeftBy.Contains(repair)).Select(fault => fault.Id)])
            : null;
    }
}
