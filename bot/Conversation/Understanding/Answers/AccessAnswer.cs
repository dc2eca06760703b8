using System.Collections.Immutable;
using System.Globalization;
using DxAssistant.Conversation.Deciding;
using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.Messages;
using DxAssistant.Conversation.Replies;
using DxAssistant.Conversation.Speaking;
using DxAssistant.Graph.Model;
using DxAssistant.Knowledge.Content.Model;
using DxAssistant.Knowledge.Readings;

namespace DxAssistant.Conversation.Understanding.Answers;

/// <summary>Confirms one step towards an access state. A reading that is not safe stops the walk at that step.</summary>
internal sealed class AccessAnswer(CommandWords words) : Answer
{
    public override QuestionKind Kind => QuestionKind.Access;

    public override bool Choose(TurnDraft turn, OpenQuestion question, string key)
    {
        if (Step(turn, question) is not ({ Limit: null }, var page, var number) || key != AccessWay.Key(number)) return false;
        Confirm(turn, page, number, null);
        return true;
    }

    public override bool Hear(TurnDraft turn, OpenQuestion question, string text)
    {
        if (Step(turn, question) is not (var step, var page, var number)) return false;
        if (step.Limit is { } limit) return Read(turn, page, number, limit, text);
        if (!words.Means("words-done", text)) return false;
        Confirm(turn, page, number, null);
        return true;
    }

    public override bool Fill(TurnDraft turn, OpenQuestion question, ImmutableArray<FilledField> fields) =>
        fields is [var only] && Hear(turn, question, only.Words);

    private static bool Read(TurnDraft turn, AccessPage page, int number, SafeLimit limit, string text)
    {
        ReadingContext context = ReadingContext.For(limit.Unit.Kind) with { DefaultUnit = limit.Unit };
        if (ReadingParser.Parse(text, context) is not ReadingResult.Readings { List: [{ State: ReadingState.Number } reading], Unclear: null })
            return NotRead(turn, limit);
        if (Math.Abs(reading.Value) <= limit.AtMost)
        {
            turn.Say(SegmentKind.Understood, "understood-safe", Speaker.From("what", limit.Reading), Slot.Said("reading", Shown(reading)));
            Confirm(turn, page, number, reading.Said);
        }
        else
            turn.Say(SegmentKind.Caution, "notice-not-safe", Slot.Said("reading", Shown(reading)), Speaker.From("limit", limit.Text));
        return true;
    }

    private static bool NotRead(TurnDraft turn, SafeLimit limit)
    {
        turn.Say(SegmentKind.Notice, "notice-reading-not-understood",
            Speaker.From("quantity", limit.Reading), Slot.Said("example", $"0.2 {limit.Unit.Symbol}"));
        return true;
    }

    private static string Shown(Reading reading) =>
        string.Create(CultureInfo.InvariantCulture, $"{reading.Unit.FromSi(reading.Value):0.###} {reading.Unit.Symbol}");

    private static void Confirm(TurnDraft turn, AccessPage page, int number, string? said)
    {
        turn.Happen(new StepConfirmed(page.Id.Value, number, said));
        if (number + 1 < page.Steps.Length) return;
        turn.Happen(new AccessReached(page.Id.Value));
        turn.Say(SegmentKind.Understood, "access-reached", Speaker.From("access", page.Title));
    }

    private static (AccessStep Step, AccessPage Page, int Number)? Step(TurnDraft turn, OpenQuestion question)
    {
        if (!turn.Library.Access.TryGetValue(new AccessId(question.Subject), out var page)) return null;
        int number = turn.State.Approach is { } approach && approach.Access == question.Subject ? approach.Done : 0;
        return number < page.Steps.Length ? (page.Steps[number], page, number) : null;
    }
}
