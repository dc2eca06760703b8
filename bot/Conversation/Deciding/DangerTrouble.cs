using System.Collections.Immutable;
using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.Replies;
using DxAssistant.Conversation.Understanding;
using DxAssistant.Graph.Model;
using DxAssistant.Knowledge.Content.Model;

namespace DxAssistant.Conversation.Deciding;

/// <summary>
/// A symptom that is a sign of danger itself is answered like one told in words: at once, whoever is there.
/// </summary>
internal sealed class DangerTrouble : IDecision
{
    public void Decide(TurnDraft turn)
    {
        foreach (DangerSign sign in SignsOf(turn)
            .Where(sign => turn.View.AppliesHere(sign.Check.Series) && !IsAnswered(turn, sign)))
        {
            foreach (string phrase in sign.AtOnce.Where(phrase => !turn.Says(phrase)))
                turn.Say(SegmentKind.Caution, phrase);
            turn.Happen(new OutcomeSeen(sign.Check.Id.Value, sign.Outcome.Value, Even(sign.Check), null,
                sign.Answer.Answer.Text));
        }
    }

    /// <summary>Warns of a trouble that is not confirmed yet: a caution waits for no question.</summary>
    public static void Warn(TurnDraft turn, SymptomId symptom)
    {
        foreach (string phrase in SignsOf(turn, [symptom]).SelectMany(sign => sign.AtOnce)
            .Where(phrase => !turn.Says(phrase)))
            turn.Say(SegmentKind.Caution, phrase);
    }

    /// <summary>Whether the trouble tells that gas may be in the air.</summary>
    public static bool IsGas(TurnDraft turn) => SignsOf(turn).Any(sign => sign.Kind == DangerKind.Gas);

    /// <summary>
    /// A result that says no more than a symptom that was weighed already: it must not count twice, least of all for a
    /// false alarm.
    /// </summary>
    public static ImmutableArray<double> Even(CheckPage page) => [.. page.Outcomes.Select(_ => 1.0)];

    // "None of these" may have been true before; a more urgent sign holds back a lesser one.
    private static bool IsAnswered(TurnDraft turn, DangerSign sign) =>
        turn.State.Results.Any(result => result.Check == sign.Check.Id.Value
            && result.Outcome is { } seen && sign.Check.Stop.Contains(new OutcomeId(seen))
            && sign.Check.DangerOf(new OutcomeId(seen)) <= sign.Kind);

    private static IEnumerable<DangerSign> SignsOf(TurnDraft turn) =>
        SignsOf(turn, turn.State.Symptoms.Select(reported => new SymptomId(reported.Symptom)));

    private static IEnumerable<DangerSign> SignsOf(TurnDraft turn, IEnumerable<SymptomId> symptoms) =>
        from symptom in symptoms
        let danger = turn.Library.Symptoms.GetValueOrDefault(symptom)?.Danger
        where danger is not null
        from page in turn.Library.Checks.Values
        from sign in page.Stop.Where(sign => page.DangerOf(sign) == danger).Take(1)
        select new DangerSign(page, sign);
}
