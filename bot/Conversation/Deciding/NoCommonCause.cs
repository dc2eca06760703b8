using System.Collections.Immutable;
using DxAssistant.Conversation.Replies;
using DxAssistant.Conversation.State;
using DxAssistant.Graph.Model;

namespace DxAssistant.Conversation.Deciding;

/// <summary>Two troubles that no one fault explains are taken one after the other.</summary>
internal sealed class NoCommonCause : IDecision
{
    public void Decide(TurnDraft turn)
    {
        ImmutableArray<Symptom> symptoms = Told(turn);
        if (symptoms.Length < 2 || HaveCommonCause(turn, symptoms)) return;
        turn.Say(SegmentKind.Notice, "notice-no-common-cause");
        turn.Ask(QuestionKind.First, "", "ask-first",
            [.. symptoms.Select(
                symptom => new Option(symptom.Id.Value, turn.Library.Symptoms[symptom.Id].Title.Text))]);
    }

    /// <summary>Whether one fault may explain a symptom together with those that were told.</summary>
    public static bool Joins(TurnDraft turn, SymptomId symptom) =>
        turn.Library.Graph.Find(symptom) is { } node && HaveCommonCause(turn, [node, .. Told(turn)]);

    private static ImmutableArray<Symptom> Told(TurnDraft turn) =>
        [.. turn.State.Symptoms.Select(known => turn.Library.Graph.Find(new SymptomId(known.Symptom)))
            .OfType<Symptom>()];

    private static bool HaveCommonCause(TurnDraft turn, ImmutableArray<Symptom> symptoms) => symptoms[0].Causes.Keys
        .Any(fault => fault != FaultId.NoneOfThese && turn.View.AppliesHere(turn.Library.Faults[fault].Series)
            && symptoms.All(symptom => symptom.Causes.ContainsKey(fault)));
}
