using System.Collections.Frozen;
using System.Collections.Immutable;
using DxAssistant.Conversation.Deciding;
using DxAssistant.Conversation.Replies;
using DxAssistant.Conversation.State;
using DxAssistant.Graph.Model;
using DxAssistant.Knowledge.Content.Model;

namespace DxAssistant.Conversation.Understanding;

/// <summary>
/// Answers what asks for nothing unsafe, whatever its words are like: whether to switch off, whether it may run on,
/// whether to reset a breaker once, who pays; and waits for who goes and looks.
/// </summary>
/// <remarks>
/// Each is heard only where nothing else is said beside it. Nothing happens to the case; the question that was open
/// stays open.
/// </remarks>
internal sealed class HarmlessQuestions
{
    // A longer message tells something besides.
    private const int MostWords = 14;

    private const string Off = "answer-off", Reset = "answer-reset", RunOn = "answer-run-on", StayOff =
        "answer-stay-off";

    private readonly ImmutableArray<string> _openings, _off, _runOn, _reset, _warranty, _going;
    private readonly FrozenSet<string> _beside, _besideRunOn, _goingOn, _waits;

    public HarmlessQuestions(PhraseBook phrases)
    {
        _openings = PhraseLists.Beginnings(phrases, "words-ask-may", "words-ask-should");
        _off = PhraseLists.Beginnings(phrases, "words-ask-off");
        _runOn = PhraseLists.Beginnings(phrases, "words-ask-run-on");
        _reset = PhraseLists.Beginnings(phrases, "words-ask-reset");
        _warranty = PhraseLists.Beginnings(phrases, "words-ask-warranty");
        _going = PhraseLists.Beginnings(phrases, "words-going");
        _beside = [.. PhraseLists.Of(phrases, "words-ask-beside"), .. PhraseLists.Of(phrases, "words-ask-machine")];
        _besideRunOn = [.. _beside, .. PhraseLists.Of(phrases, "words-ask-until")];
        _goingOn = [.. PhraseLists.Of(phrases, "words-going-on")];
        _waits = [.. PhraseLists.Of(phrases, "words-wait")];
    }

    /// <returns>False when the words ask nothing of the kind, or more than that.</returns>
    public bool Hear(TurnDraft turn, string text)
    {
        string said = PlainWords.Joined(text);
        if (PlainWords.Of(text).Length > MostWords || Answer(turn, said) is not { } phrase) return false;
        // With gas about, the remote control is a switch too.
        if (phrase is Off or Reset or StayOff && IsGas(turn)) turn.Say(SegmentKind.Caution, "closed-stop-gas");
        else turn.Say(SegmentKind.Notice, phrase);
        return true;
    }

    private string? Answer(TurnDraft turn, string said)
    {
        if (Asks(said, _off, _beside)) return Off;
        if (Asks(said, _runOn, _besideRunOn)) return IsToStayOff(turn) ? StayOff : RunOn;
        if (Asks(said, _reset, _beside)) return IsToStayOff(turn) ? StayOff : Reset;
        if (PhraseLists.After(_warranty, said) is { } rest && IsIdle(rest, _beside)) return "answer-warranty";
        return IsOpenToWaiting(turn) && Waits(said) ? "notice-take-your-time" : null;
    }

    private bool Asks(string said, ImmutableArray<string> acts, FrozenSet<string> beside) =>
        PhraseLists.After(_openings, said) is { } asked && PhraseLists.After(acts, asked) is { } rest
            && IsIdle(rest, beside);

    // What was found or told so far says that it must not run: a sign of danger, what its page calls a
    // trouble to stay off with, such as a breaker that trips again, or what can burn.
    private static bool IsToStayOff(TurnDraft turn) =>
        (turn.State.ClosedHow is not null && EndOfWalk.SuspectsOf(turn).Any(page => page.CanBurn))
        || turn.State.Symptoms.Any(
            told => turn.Library.Symptoms.GetValueOrDefault(new SymptomId(told.Symptom)) is { StaysOff: true }
                or { Danger: not null })
        || StepChooser.DemandsSafeState(turn.Library, turn.State)
        || turn.View.Results.Any(result => IsSignToStop(turn, result));

    private static bool IsGas(TurnDraft turn) => DangerTrouble.IsGas(turn) || turn.View.Results.Any(result =>
        IsSignToStop(turn, result)
            && turn.Library.Checks[new CheckId(result.Check)].DangerOf(
                new OutcomeId(result.Outcome!)) == DangerKind.Gas);

    private static bool IsSignToStop(TurnDraft turn, SeenResult result) => result.Outcome is { } seen
        && turn.Library.Checks.GetValueOrDefault(new CheckId(result.Check)) is { } page
        && (page.Stop.Contains(new OutcomeId(seen)) || page.LeaveOff.Contains(new OutcomeId(seen)));

    private bool Waits(string said) =>
        _waits.Contains(said) || (PhraseLists.After(_going, said) is { Length: > 0 } rest && IsIdle(rest, _goingOn));

    // "Not yet" tells how a trial run went.
    private static bool IsOpenToWaiting(TurnDraft turn) =>
        turn.State.Question is { Kind: not (QuestionKind.Verify or QuestionKind.Gone or QuestionKind.Doubt) };

    private static bool IsIdle(string rest, FrozenSet<string> idle) => PlainWords.Of(rest).All(idle.Contains);
}
