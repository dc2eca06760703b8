using System.Collections.Immutable;
using DxAssistant.Conversation.Deciding;
using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.Replies;
using DxAssistant.Conversation.Speaking;
using DxAssistant.Graph.Model;
using DxAssistant.Knowledge.Clarifying;
using DxAssistant.Knowledge.Content.Model;
using DxAssistant.Knowledge.Search;
using DxAssistant.Knowledge.Search.Indexing;

namespace DxAssistant.Conversation.Understanding;

/// <summary>Takes a sign of danger before anything else, whoever tells it and whatever is asked.</summary>
internal sealed class Danger(DangerWords words, IMatcher matcher, BesideDanger beside)
{
    private const string KeepRunning = "keep-running-danger";

    /// <summary>Whether a message tells of danger.</summary>
    public bool IsTold(string text) => words.Find(text) is not null;

    /// <summary>Whether a message tells that gas may be in the air.</summary>
    public bool IsGasTold(string text) => words.Find(text) is { Kind: DangerKind.Gas };

    /// <summary>
    /// Whether a sign of gas makes a refusal wrong: one that tells to switch off, or one that no rule demands.
    /// </summary>
    public bool Outranks(string text, MatchResult match) =>
        (match.IsByLikeness || match.RefusalId == KeepRunning) && words.Find(text) is { Kind: DangerKind.Gas };

    /// <summary>Says what to do at a danger that is only asked about; nothing of it is evidence.</summary>
    /// <returns>False when what is asked about is no danger.</returns>
    public bool Advise(TurnDraft turn, string about)
    {
        if (words.Find(about) is null) return false;
        turn.Say(SegmentKind.Notice, "answer-if-danger");
        return true;
    }

    /// <summary>Says what to do at once, and keeps the sign as evidence.</summary>
    /// <returns>False when no danger is told, or when it is the answer to what was asked.</returns>
    public bool Hear(TurnDraft turn, string text)
    {
        ImmutableArray<DangerSign> signs = words.FindAll(text);
        if (signs is not [var sign, ..] || IsAnswer(turn, sign, text) || IsKnown(turn, sign)) return false;
        turn.Say(SegmentKind.Understood, "understood-answer", Slot.Of("check", sign.Check.Title),
            Slot.Of("answer", sign.Answer.Answer));
        // Where gas is about, no switch is named for another danger.
        foreach (string phrase in (sign.Kind == DangerKind.Gas ? sign.AtOnce
            : [.. signs.SelectMany(it => it.AtOnce)]).Distinct())
            turn.Say(SegmentKind.Caution, phrase);
        ImmutableArray<string> troubles = [.. signs.SelectMany(it => Troubles(turn, it, text)).Distinct()];
        bool isToldByOne = troubles.Any(trouble => turn.Library.Symptoms[new SymptomId(trouble)].Danger == sign.Kind);
        turn.Happen(new OutcomeSeen(sign.Check.Id.Value, sign.Outcome.Value,
            isToldByOne ? DangerTrouble.Even(sign.Check) : Certain(sign), null, sign.Answer.Answer.Text));
        if (turn.View.Series is null && SeriesNames.Find(turn.Library, text) is { } named)
            SeriesNames.Choose(turn, named);
        foreach (string trouble in troubles) Symptoms.Report(turn, trouble, text.Trim());
        beside.Keep(turn, words.Beside(text));
        return true;
    }

    // Without another trouble, the sign is the trouble. Where its page says how the unit must stand before anything
    // else is done, it is one beside any other: nobody switches on what smells burnt because the display shows a code
    // too.
    private ImmutableArray<string> Troubles(TurnDraft turn, DangerSign sign, string text)
    {
        bool isFirst = turn.State.Symptoms.IsEmpty && turn.State.Code is null;
        string? told = isFirst ? Offering.CertainSymptom(matcher.Match(text, turn.State.Series)) : null;
        string? own = Offering.CertainSymptom(matcher.Match(sign.Answer.Answer.Text, turn.State.Series));
        if (own is not null && own != told && !Symptoms.DemandsSafeState(turn, own) && (!isFirst || told is not null))
            own = null;
        return [.. new[] { own, told }.OfType<string>().Distinct()
            .Where(trouble => turn.State.Symptoms.All(known => known.Symptom != trouble))];
    }

    // An answer in the words of the open question is taken as one, unless it is another sign of danger: "no smoke, but
    // a loud hiss" is the hiss.
    private static bool IsAnswer(TurnDraft turn, DangerSign sign, string text) =>
        turn.State.Question is { Kind: QuestionKind.Check } open
        && OptionMatcher.Find(text, open.Options, turn.Library.Language) is { } option
        && (open.Subject != sign.Check.Id.Value || option.Key == sign.Outcome.Value);

    // Who works at the unit for a living is told once.
    private static bool IsKnown(TurnDraft turn, DangerSign sign) => turn.View.Role.Rank > 0
        && turn.State.Results.Any(result => result.Check == sign.Check.Id.Value
            && result.Outcome == sign.Outcome.Value);

    private static ImmutableArray<double> Certain(DangerSign sign) =>
        [.. sign.Check.Outcomes.Select(option => option.Id == sign.Outcome ? 1.0 : 0.0)];
}
