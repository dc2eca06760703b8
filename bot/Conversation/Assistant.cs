using System.Collections.Frozen;
using System.Collections.Immutable;
using DxAssistant.Conversation.Deciding;
using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.Languages;
using DxAssistant.Conversation.Messages;
using DxAssistant.Conversation.Replies;
using DxAssistant.Conversation.Speaking;
using DxAssistant.Conversation.State;
using DxAssistant.Conversation.Understanding;
using DxAssistant.Conversation.Understanding.Answers;
using DxAssistant.Conversation.Understanding.Whole;
using DxAssistant.Knowledge.Content;
using DxAssistant.Knowledge.Languages;
using DxAssistant.Knowledge.Search;
using DxAssistant.Knowledge.Search.Indexing;
using DxAssistant.Knowledge.Search.Terms;

namespace DxAssistant.Conversation;

/// <summary>
/// The heart: a case and a message in, events and a reply out. Pure, and safe to use from many threads.
/// </summary>
public sealed class Assistant
{
    private readonly Voices _voices;
    private readonly ImmutableArray<IDecision> _decisions;
    private readonly KnownTurns _known = new();
    private readonly LateMatcher? _matcher;

    /// <param name="library">The content.</param>
    /// <param name="late">
    /// Whether other languages and the understanding of free words are made when they are first needed: quick to begin.
    /// </param>
    /// <exception cref="ArgumentException">
    /// The phrase file lacks phrases that the conversation needs; all are named.
    /// </exception>
    public Assistant(Library library, bool late = false)
    {
        Library = library;
        var chooser = new StepChooser(library);
        var beliefs = new KnownBeliefs();
        _matcher = late ? LateMatcherOf(library) : null;
        _voices = new Voices(
            Speaking(library, library, chooser, beliefs, _matcher),
            tag => Speaking(library.Translations[tag], library, chooser, beliefs,
                late ? LateMatcherOf(library.Translations[tag]) : null));
        if (!late) _voices.Make();
        _decisions = Deciding(chooser);
    }

    /// <summary>The content the case is walked on.</summary>
    public Library Library { get; }

    /// <summary>Makes what was put off until it is needed, so that nobody waits for it.</summary>
    public void GetReady() => _voices.GetReady();

    /// <summary>
    /// Does a small part of the understanding of free words in the main language, so that other work can come between.
    /// </summary>
    /// <returns>Whether there is more to do.</returns>
    public bool GetReadier() => _matcher?.GoOn() ?? false;

    /// <summary>Takes one message.</summary>
    /// <param name="state">The fold of the case's events so far; <see cref="CaseState.New"/> for a new case.</param>
    public Turn Take(CaseState state, Message message) => _known.Of(state, message, () => WorkOut(state, message));

    private Turn WorkOut(CaseState state, Message message)
    {
        var turn = new TurnDraft(_voices.Of(state.Language), state);
        if (state.ContentVersion is null) turn.Happen(new Opened(Library.Version));
        turn.Happen(new Said(message.TurnId, message.By, message.Body));
        if (state.ContentVersion is { } begun && begun != Library.Version) ChangeContent(turn);
        if (_voices.Hear(turn, message.Body) is { } body) turn.Voice.Listener.Listen(turn, body);
        if (turn.Question is null) End(turn, message.Body);
        return turn.Finish();
    }

    // A message that changed nothing leaves the same question open, without saying everything again.
    private void End(TurnDraft turn, MessageBody body)
    {
        if (!turn.Changed && turn.State.Question is { } open && !IsAgain(turn, body)) turn.AskAgain(open);
        else foreach (IDecision decision in _decisions)
        {
            decision.Decide(turn);
            if (turn.Question is not null) return;
        }
    }

    private static bool IsAgain(TurnDraft turn, MessageBody body) => turn.GoesOn || body switch
    {
        MessageBody.Command { Word: CommandWord.Again } or MessageBody.Opening => true,
        MessageBody.Choice or MessageBody.Readings => turn.Stale,
        MessageBody.Words when turn.Stale => true,
        MessageBody.Words { Text: var text } => turn.Voice.Listener.IsAgain(text),
        _ => false,
    };

    private static void ChangeContent(TurnDraft turn)
    {
        turn.Happen(new ContentChanged(turn.Library.Version));
        turn.Say(SegmentKind.Notice, "notice-content-changed");
    }

    private static Voice Speaking(Library library, Library main, StepChooser chooser, KnownBeliefs beliefs,
        LateMatcher? late)
    {
        RequirePhrases(library);
        return new Voice(library, new Speaker(library.Phrases, library.Language, main.Language),
            Listening(library, chooser, late), beliefs);
    }

    private static Listener Listening(Library library, StepChooser chooser, LateMatcher? late)
    {
        var words = new CommandWords(library.Phrases);
        IMatcher matcher = late ?? MatcherOf(library);
        var dangerous = new DangerWords(library);
        var whole = new WholeReader(library, dangerous);
        if (late is null) whole.GetReady();
        var person = new RoleAnswer(whole, new RoleWords(library.Phrases));
        Answer[] answers =
        [
            new SeriesAnswer(), person, new SymptomAnswer(words), new ToldAnswer(words), new FirstAnswer(),
            new CodeAnswer(words), new AccessAnswer(words),
            new CheckAnswer(words), new MeaningAnswer(words), new ContradictionAnswer(), new RepairAnswer(words),
            new VerifyAnswer(words), new LeftOverAnswer(words), new ClosedAnswer(), new ProofAnswer(),
            new LeftOutAnswer(words), new DoubtAnswer(words), new GoneAnswer(words),
        ];
        var commands = new Commands(words, new WhySpeech(chooser));
        var byKind = answers.ToFrozenDictionary(answer => answer.Kind);
        var danger = new Danger(dangerous, matcher, new BesideDanger(whole, matcher));
        return new Listener(
            commands, byKind, matcher, whole, danger, new FaultQuestions(library.Phrases, matcher),
            new SideQuestions(library, chooser), new FirstHelp(library, danger), new ComplaintPieces(matcher, whole),
            new RefusedMessages(matcher, whole), new HarmlessQuestions(library.Phrases), person,
            new GoneTrouble(new Denials(library, words)), new Corrections(commands, words, byKind, danger, whole));
    }

    private static LateMatcher LateMatcherOf(Library library) =>
        new(library.Language is { IsMain: false } ? TongueSteps(library) : Matcher.Steps(library));

    // One step, taken when it is asked for.
    private static IEnumerable<IMatcher?> TongueSteps(Library library)
    {
        yield return new TongueMatcher(library);
    }

    private static IMatcher MatcherOf(Library library) =>
        library.Language is { IsMain: false } ? new TongueMatcher(library) : Matcher.For(library);

    private static ImmutableArray<IDecision> Deciding(StepChooser chooser)
    {
        var closed = new ClosedCase();
        var role = new MissingRole();
        var stop = new StopSign(closed);
        var end = new EndOfWalk(closed, new ThingsToBring(chooser), chooser.Unseen);
        // Asked again after what was told was confirmed and the code looked up: either may have left no trouble.
        var complaint = new MissingComplaint();
        return
        [
            closed, new LeftCase(end), new GoneCase(end), new DangerTrouble(), new DangerRole(role), stop, complaint,
            new MissingSeries(), new UnconfirmedTold(), new PendingCode(), complaint,
            new NoCommonCause(), role, stop, new DangerFirst(), new LeftOff(end), new ToldMode(),
            new UnverifiedRepair(end), new LeftOver(),
            new Contradiction(), new NextStep(chooser, end),
        ];
    }

    private static void RequirePhrases(Library library)
    {
        ImmutableArray<string> missing = library.Phrases.Missing(PhraseIds.All);
        if (!missing.IsEmpty)
            throw new ArgumentException($"the phrase file lacks: {string.Join(", ", missing)}", nameof(library));
    }
}
