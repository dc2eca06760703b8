using System.Collections.Immutable;
using DxAssistant.Conversation.Replies;
using DxAssistant.Conversation.Speaking;
using DxAssistant.Graph.Model;
using DxAssistant.Knowledge.Content.Model;

namespace DxAssistant.Conversation.Deciding;

/// <summary>Says hazards: what each is, then what to do about it.</summary>
internal static class Cautions
{
    /// <summary>The hazards of an access state and of the trouble, in full, before its first step.</summary>
    public static void SayAll(TurnDraft turn, AccessPage access)
    {
        IEnumerable<CautionPage> ofTrouble = turn.State.Symptoms.SelectMany(
            reported => turn.Library.Symptoms.GetValueOrDefault(new SymptomId(reported.Symptom))?.Cautions ?? []);
        foreach (CautionPage caution in ofTrouble.Concat(access.Cautions).DistinctBy(caution => caution.Id))
            SayWhole(turn, caution);
    }

    /// <summary>
    /// The hazards of a check or repair: in full, unless they were part of the way to the access state the unit now
    /// stands in, or were told since; then the danger alone is called to mind.
    /// </summary>
    public static void SayThoseOf(TurnDraft turn, ImmutableArray<CautionPage> cautions)
    {
        ImmutableArray<CautionPage> told = turn.Library.Access[turn.View.Access].Cautions;
        foreach (CautionPage caution in cautions)
            if (told.Any(known => known.Id == caution.Id) || turn.State.Told.Contains(caution.Danger.Place.Path))
                turn.Quote(SegmentKind.Caution, caution.Danger);
            else SayWhole(turn, caution);
    }

    /// <summary>
    /// The hazards before a repair: those told on the way to the access state, or since, by their names on one line;
    /// then the others in full. Where the job begins nothing was told on the way.
    /// </summary>
    public static void SayBefore(TurnDraft turn, RepairPage repair)
    {
        ImmutableArray<CautionPage> onTheWay = turn.View.Access == turn.Library.Graph.Access.Start ? []
            : turn.Library.Access[turn.View.Access].Cautions;
        CautionPage[] told =
            [.. onTheWay.Concat(repair.Cautions.Where(caution => turn.State.Told.Contains(caution.Danger.Place.Path)))
                .DistinctBy(caution => caution.Id)];
        if (told.Length > 0)
            turn.Say(SegmentKind.Caution, "cautions-kept",
                Slot.List("cautions", [.. told.Select(caution => caution.Title)]));
        foreach (CautionPage caution in repair.Cautions.ExceptBy(told.Select(known => known.Id), caution => caution.Id))
            SayWhole(turn, caution);
    }

    private static void SayWhole(TurnDraft turn, CautionPage caution)
    {
        turn.Quote(SegmentKind.Caution, caution.Danger);
        turn.Quote(SegmentKind.Caution, caution.Do);
    }
}
