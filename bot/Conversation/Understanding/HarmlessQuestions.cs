using System.Collections.Frozen;
using System.Collections.Immutable;
using DxAssistant.Conversation.Deciding;
using DxAssistant.Conversation.Replies;
using DxAssistant.Knowledge.Content.Model;

namespace DxAssistant.Conversation.Understanding;

/// <summary>Answers what asks for nothing unsafe, whatever its words are like: whether to switch off, whether to reset a breaker once,
/// who pays; and waits for who goes and looks.</summary>
/// <remarks>Each is heard only where nothing else is said beside it. Nothing happens to the case; the question that was open stays open.</remarks>
internal sealed class HarmlessQuestions
{
    // A longer message tells something besides.
    private const int MostWords = 14;

    private const string Off = "answer-off", Reset = "answer-reset";

    private readonly ImmutableArray<string> _openings, _off, _reset, _warranty, _going;
    private readonly FrozenSet<string> _beside, _goingOn, _waits;

    public HarmlessQuestions(PhraseBook phrases)
    {
        _openings = Longest([.. Entries(phrases, "words-ask-may"), .. Entries(phrases, "words-ask-should")]);
        _off = Longest(Entries(phrases, "words-ask-off"));
        _reset = Longest(Entries(phrases, "words-ask-reset"));
        _warranty = Longest(Entries(phrases, "words-ask-warranty"));
        _going = Longest(Entries(phrases, "words-going"));
        _beside = [.. Entries(phrases, "words-ask-beside"), .. Entries(phrases, "words-ask-machine")];
        _goingOn = [.. Entries(phrases, "words-going-on")];
        _waits = [.. Entries(phrases, "words-wait")];
    }

    /// <returns>False when the words ask nothing of the kind, or more than that.</returns>
    public bool Hear(TurnDraft turn, string text)
    {
        string said = PlainWords.Joined(text);
        if (PlainWords.Of(text).Length > MostWords || Answer(turn, said) is not { } phrase) return false;
        // With gas about, the remote control is a switch too.
        if (phrase is Off or Reset && DangerTrouble.IsGas(turn)) turn.Say(SegmentKind.Caution, "closed-stop-gas");
        else turn.Say(SegmentKind.Notice, phrase);
        return true;
    }

    private string? Answer(TurnDraft turn, string said)
    {
        if (Asks(said, _off)) return Off;
        if (Asks(said, _reset)) return Reset;
        if (After(_warranty, said) is { } rest && IsIdle(rest, _beside)) return "answer-warranty";
        return IsOpenToWaiting(turn) && Waits(said) ? "notice-take-your-time" : null;
    }

    private bool Asks(string said, ImmutableArray<string> acts) =>
        After(_openings, said) is { } asked && After(acts, asked) is { } rest && IsIdle(rest, _beside);

    private bool Waits(string said) => _waits.Contains(said) || (After(_going, said) is { Length: > 0 } rest && IsIdle(rest, _goingOn));

    // "Not yet" tells how a trial run went.
    private static bool IsOpenToWaiting(TurnDraft turn) => turn.State.Question is { Kind: not (QuestionKind.Verify or QuestionKind.Gone or QuestionKind.Doubt) };

    private static bool IsIdle(string rest, FrozenSet<string> idle) => PlainWords.Of(rest).All(idle.Contains);

    private static string? After(ImmutableArray<string> beginnings, string said) =>
        beginnings.FirstOrDefault(words => said == words || said.StartsWith(words + " ", StringComparison.Ordinal)) is { } beginning ? said[beginning.Length..].Trim() : null;

    private static IEnumerable<string> Entries(PhraseBook phrases, string id) => phrases.Template(id).Split(',').Select(PlainWords.Joined);

    private static ImmutableArray<string> Longest(IEnumerable<string> entries) =>
        [.. entries.Distinct().OrderByDescending(words => words.Length).ThenBy(words => words, StringComparer.Ordinal)];
}
