using System.Collections.Immutable;
using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.Languages;
using DxAssistant.Conversation.Messages;
using DxAssistant.Conversation.Replies;
using DxAssistant.Conversation.Speaking;
using DxAssistant.Conversation.State;
using DxAssistant.Knowledge.Content;
using DxAssistant.Knowledge.Content.Model;

namespace DxAssistant.Conversation;

/// <summary>
/// A turn while it is being made: what happened so far, what is said so far, where the case stands after it.
/// </summary>
internal sealed class TurnDraft(Voice voice, CaseState state)
{
    private readonly ImmutableArray<CaseEvent>.Builder _events = ImmutableArray.CreateBuilder<CaseEvent>();
    private readonly ImmutableArray<Segment>.Builder _segments = ImmutableArray.CreateBuilder<Segment>();
    private CaseView? _view;

    public Voice Voice { get; private set; } = voice;

    public Library Library => Voice.Library;

    public Speaker Speaker => Voice.Speaker;

    /// <summary>Where the case stands, everything of this turn included.</summary>
    public CaseState State { get; private set; } = state;

    /// <summary>The same, seen through the pages.</summary>
    public CaseView View =>
        ReferenceEquals(_view?.State, State) ? _view! : _view = new CaseView(Library, State, Voice.Beliefs);

    /// <summary>Whether anything happened beyond the message coming in.</summary>
    public bool Changed => _events.Any(happened => happened is not (Opened or Said));

    /// <summary>Whether the walk goes on from where it was, although nothing changed.</summary>
    public bool GoesOn { get; set; }

    /// <summary>Whether the message answered a question that is no longer open.</summary>
    public bool Stale { get; set; }

    /// <summary>The question this turn ends in; once it is set nothing further is decided.</summary>
    public OpenQuestion? Question { get; private set; }

    public void Happen(CaseEvent happened)
    {
        _events.Add(happened);
        State = Fold.Apply(State, happened);
    }

    /// <summary>Goes on in another language.</summary>
    public void Speak(Voice voice)
    {
        Voice = voice;
        _view = null;
    }

    /// <summary>What was said of readings and displays, in the words that their readers know.</summary>
    public string Heard(string text) => Voice.Tongue?.Heard(text) ?? text;

    public void Say(SegmentKind kind, string phrase, params ReadOnlySpan<Slot> slots) =>
        _segments.Add(Speaker.Say(kind, phrase, slots));

    /// <summary>Says something before the question, also when the question is asked already.</summary>
    public void Note(string phrase, params ReadOnlySpan<Slot> slots)
    {
        Segment note = Speaker.Say(SegmentKind.Notice, phrase, slots);
        int place = Question is null ? _segments.Count : _segments.Count - 1;
        _segments.Insert(place, note);
    }

    /// <summary>Whether the readings of this message are told with doubt.</summary>
    public bool IsDoubted { get; set; }

    /// <summary>Whether this turn says a phrase already.</summary>
    public bool Says(string phrase) => _segments.Any(segment => segment.From.Contains(new Provenance.Phrase(phrase)));

    public void Say(Segment segment) => _segments.Add(segment);

    public void Quote(SegmentKind kind, Passage passage) => _segments.Add(Speaker.Quote(kind, passage));

    public void Quote(SegmentKind kind, IEnumerable<Passage> passages)
    {
        foreach (Passage passage in passages) Quote(kind, passage);
    }

    /// <summary>Whether something of a kind happened in this turn.</summary>
    public bool Happened<T>() where T : CaseEvent => _events.Any(happened => happened is T);

    /// <summary>Ends the turn in a question.</summary>
    public void Ask(
        QuestionKind kind, string subject, Segment question, ImmutableArray<Option> options,
        ImmutableArray<Field> fields, ImmutableArray<CommandWord> commands)
    {
        Say(question);
        Question = new OpenQuestion(
            $"q{State.Turns}", kind, subject, question.Text, question.From, options, fields, commands);
    }

    /// <summary>Ends the turn in a question that stands in a phrase.</summary>
    public void Ask(QuestionKind kind, string subject, string phrase, params ImmutableArray<Option> options) =>
        Ask(kind, subject, Speaker.Say(SegmentKind.Question, phrase), options, [], Offered.Always);

    /// <summary>A thing to tap whose label is a phrase.</summary>
    public Option Option(string key, string phrase) => new(key, Speaker.Text(phrase));

    /// <summary>Keeps a question open as it stands.</summary>
    /// <remarks>Its id is new, as any other's: an answer to the older copy is a stale one.</remarks>
    public void AskAgain(OpenQuestion question) =>
        Ask(question.Kind, question.Subject, new Segment(SegmentKind.Question, question.Text, question.From),
            question.Options, question.Fields, question.Commands);

    public Turn Finish()
    {
        var reply = new Reply(_segments.ToImmutable(), Question, View.Lines(), AccessNow());
        Happen(new Replied(reply));
        return new Turn(_events.ToImmutable(), reply) { After = State };
    }

    private string? AccessNow() =>
        State.Symptoms.IsEmpty ? null : View.Access.Value;
}
