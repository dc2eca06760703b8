using System.Collections.Frozen;
using System.Collections.Immutable;
using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.Messages;
using DxAssistant.Conversation.Replies;
using DxAssistant.Conversation.Speaking;
using DxAssistant.Conversation.Understanding;
using DxAssistant.Knowledge.Content.Model;
using DxAssistant.Knowledge.Languages;

namespace DxAssistant.Conversation.Languages;

/// <summary>Every language spoken, and when a case changes from one to another.</summary>
internal sealed class Voices
{
    private readonly Voice _main;
    private readonly FrozenDictionary<string, Lazy<Voice>> _others;
    private readonly FrozenDictionary<string, string> _chosenBy;
    private readonly Lazy<LanguageGuess> _guess;

    /// <param name="other">Makes the voice of a language besides the main one, when it is first needed.</param>
    public Voices(Voice main, Func<string, Voice> other)
    {
        (_main, _guess) = (main, new(() => new LanguageGuess(main.Library)));
        _others =
            main.Library.Translations.Keys.ToFrozenDictionary(tag => tag, tag => new Lazy<Voice>(() => other(tag)));
        _chosenBy = main.Library.Languages.Values.Where(page => IsSpoken(page.Id))
            .SelectMany(page => page.ChosenBy.Select(words => (Words: PlainWords.Joined(words), page.Id)))
            .DistinctBy(pair => pair.Words).ToFrozenDictionary(pair => pair.Words, pair => pair.Id);
    }

    private IEnumerable<Voice> Others =>
        _others.OrderBy(voice => voice.Key, StringComparer.Ordinal).Select(voice => voice.Value.Value);

    /// <summary>Makes the voices of all languages.</summary>
    public void Make()
    {
        foreach (Voice _ in Others) continue;
        _ = _guess.Value;
    }

    /// <summary>Makes what understanding typed words needs, in all languages.</summary>
    public void GetReady()
    {
        Make();
        foreach (Voice voice in Others.Prepend(_main)) voice.Listener.GetReady();
    }

    /// <summary>The language of a case; the main one until another is chosen.</summary>
    public Voice Of(string? language) =>
        language is not null && _others.TryGetValue(language, out Lazy<Voice>? voice) ? voice.Value : _main;

    private bool IsSpoken(string language) => language == _main.Library.Language?.Id || _others.ContainsKey(language);

    /// <summary>Takes what the message says about the language itself.</summary>
    /// <returns>What is left to be understood; null when that was all.</returns>
    public MessageBody? Hear(TurnDraft turn, MessageBody body)
    {
        if (body is MessageBody.Words { Text: var text })
        {
            if (_chosenBy.TryGetValue(PlainWords.Joined(text), out string? chosen)) return Choose(turn, chosen);
            if (turn.State.Question is not { Kind: QuestionKind.Language } open)
                return Detect(turn, text) || HearsAnother(turn, text) ? null : body;
            if (Answered(open, text) is not { } language)
                return Asked(open)?.Library.Language!.Id is { } theirs && _guess.Value.Of(text) == theirs
                    ? Confirm(turn, theirs, $"{open.Subject}. {text}")
                    : Stay(turn, body);
            body = new MessageBody.Choice(open.Id, language);
        }

        return body is MessageBody.Choice { Key: var key } choice
            && turn.State.Question is { Kind: QuestionKind.Language } asked
            && (choice.Question is null || choice.Question == asked.Id) && IsSpoken(key)
            ? Confirm(turn, key, asked.Subject)
            : body;
    }

    private MessageBody.Words? Choose(TurnDraft turn, string language)
    {
        string first = turn.State.Question is { Kind: QuestionKind.Language } asked ? asked.Subject : "";
        return Confirm(turn, language, first);
    }

    // The message that led to the question is heard again, now in its language. Who goes on in another has told the
    // trouble all the same.
    private MessageBody.Words? Confirm(TurnDraft turn, string language, string first)
    {
        Voice? guessed = Asked(turn.State.Question);
        Speak(turn, language);
        turn.Say(SegmentKind.Notice, "notice-language");
        turn.GoesOn = true;
        if (first.Length == 0) return null;
        // What is refused in one language is refused in the other.
        if (guessed is not null && Of(language) == _main && guessed.Listener.RefusedIn(first) is { } page)
        {
            Refusals.Say(turn, _main.Library.Refusals[page]);
            return null;
        }

        return Of(language) == _main && guessed is { } other && other.Listener.SymptomIn(first) is { } symptom
            ? new MessageBody.Words(_main.Library.Symptoms[symptom].Title.Text)
            : new MessageBody.Words(first);
    }

    // The language that an answer means: named in it, or a yes or no to going on in the language that was guessed.
    private string? Answered(OpenQuestion open, string text)
    {
        if (OptionMatcher.Find(text, open.Options) is { } option) return option.Key;
        string said = $" {PlainWords.Joined(text)} ";
        if (_chosenBy.Keys.Where(words => said.Contains($" {words} ", StringComparison.Ordinal))
            .MaxBy(words => words.Length) is { } named)
            return _chosenBy[named];
        if (Asked(open) is not { } guessed) return null;
        string theirs = guessed.Library.Language!.Id;
        if (guessed.Listener.IsYes(text) || _main.Listener.IsYes(text)) return theirs;
        return guessed.Listener.IsNo(text) || _main.Listener.IsNo(text) ? _main.Library.Language!.Id : null;
    }

    // The voice of the language that a question for the language has guessed.
    private Voice? Asked(OpenQuestion? question) =>
        question is { Kind: QuestionKind.Language, Options: [{ Key: var key }, ..] } && Of(key) is var voice
            && voice != _main ? voice : null;

    // An answer that is none: the case stays as it is, and is not asked again.
    private MessageBody Stay(TurnDraft turn, MessageBody body)
    {
        Speak(turn, Of(turn.State.Language).Library.Language!.Id);
        return body;
    }

    private void Speak(TurnDraft turn, string language)
    {
        turn.Happen(new LanguageChosen(language));
        turn.Speak(Of(language));
    }

    private bool Detect(TurnDraft turn, string text)
    {
        if (!IsAtStart(turn) || text.Length > Listener.Longest) return false;
        if (InDanger(text) is { } theirs)
        {
            Speak(turn, theirs);
            return false;
        }

        if (_guess.Value.Of(text) is not { } language) return false;
        if (IsSpoken(language)) Ask(turn, Of(language), text);
        else if (_main.Library.Languages[language].Answer is { } answer) turn.Quote(SegmentKind.Notice, answer);
        else return false;
        return true;
    }

    // Where the language is settled or the walk has begun, a whole message in another one is no answer that does not
    // fit: danger is heard in it, what is unsafe is refused, and for the rest it is said how to go on in it.
    private bool HearsAnother(TurnDraft turn, string text)
    {
        Voice own = turn.Voice;
        if (IsAtStart(turn) || text.Length > Listener.Longest || Another(turn, text) is not { } theirs) return false;
        if (theirs.Listener.IsUrgent(text) && !own.Listener.IsUrgent(text))
        {
            Speak(turn, theirs.Library.Language!.Id);
            return false;
        }

        string? refused = own.Listener.RefusedIn(text) is null ? theirs.Listener.RefusedIn(text) : null;
        if (refused is null && IsUnderstood(turn, text)) return false;
        if (refused is not null) Refusals.Say(turn, own.Library.Refusals[refused]);
        turn.Say(theirs.Speaker.Say(SegmentKind.Notice, "notice-go-on-in"));
        turn.Say(own.Speaker.Say(SegmentKind.Notice, "notice-case-is-in"));
        return true;
    }

    private Voice? Another(TurnDraft turn, string text)
    {
        string said = SeriesNames.Without(turn.Library, text), own = turn.Voice.Library.Language!.Id;
        return Others.Prepend(_main).FirstOrDefault(voice => voice != turn.Voice
            && _guess.Value.IsIn(said, voice.Library.Language!.Id, own));
    }

    // Tried on a draft that nobody sees.
    private static bool IsUnderstood(TurnDraft turn, string text)
    {
        var tried = new TurnDraft(turn.Voice, turn.State);
        turn.Voice.Listener.Listen(tried, new MessageBody.Words(text));
        return tried.Changed || tried.GoesOn || tried.Question is not null
            || turn.Voice.Listener.RefusedIn(text) is not null;
    }

    private static bool IsAtStart(TurnDraft turn) => turn.State is { Language: null, Symptoms.IsEmpty: true };

    // Danger leaves no time to ask for the language.
    private string? InDanger(string text) => _main.Listener.IsUrgent(text) ? null
        : Others.FirstOrDefault(voice => voice.Listener.IsUrgent(text))?.Library.Language!.Id;

    private void Ask(TurnDraft turn, Voice voice, string text)
    {
        Segment theirs = voice.Speaker.Say(SegmentKind.Question, "ask-language");
        Segment ours = _main.Speaker.Say(SegmentKind.Question, "ask-language");
        turn.Ask(QuestionKind.Language, text, theirs with { Text = $"{theirs.Text} / {ours.Text}" },
            [Option(voice.Library.Language!), Option(_main.Library.Language!)], [], []);
    }

    private static Option Option(LanguagePage page) => new(page.Id, page.Name.Text);
}
