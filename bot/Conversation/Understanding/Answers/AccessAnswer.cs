using System.Collections.Immutable;
using DxAssistant.Conversation.Deciding;
using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.Messages;
using DxAssistant.Conversation.Replies;
using DxAssistant.Conversation.Speaking;
using DxAssistant.Graph.Model;
using DxAssistant.Knowledge.Content.Model;
using DxAssistant.Knowledge.Readings;

namespace DxAssistant.Conversation.Understanding.Answers;

/// <summary>
/// Confirms one step towards an access state. A reading that is not safe stops the walk at that step.
/// </summary>
internal sealed class AccessAnswer(CommandWords words) : Answer
{
    // How a step says "lock", in each language.
    private static readonly string[] Locks = ["lock", "bloq"];

    public override QuestionKind Kind => QuestionKind.Access;

    public override bool Choose(TurnDraft turn, OpenQuestion question, string key)
    {
        if (Step(turn, question) is not ({ Limit: null }, var page, var number)) return false;
        if (key != AccessWay.Key(number)) return false;
        Confirm(turn, page, number, null);
        return true;
    }

    public override bool Hear(TurnDraft turn, OpenQuestion question, string text)
    {
        if (Step(turn, question) is not (var step, var page, var number)) return false;
        // A "1" typed three times for "done" must not be the voltage at the fourth step.
        if (step.Limit is { } limit)
            return NumberAlone.Is(text)
                ? NumberAlone.AskForUnit(turn, text, limit.Unit, limit.Text.Place)
                : Read(turn, page, number, limit, turn.Heard(text));
        if (!words.Means("words-done", text) && !(words.Means("words-locked", text) && IsLock(step))) return false;
        Confirm(turn, page, number, null);
        return true;
    }

    // "Its locked" is done where the step says to lock something, and nowhere else.
    private static bool IsLock(AccessStep step) =>
        PlainWords.Of(step.Do.Text).Any(word => Locks.Any(stem => word.StartsWith(stem, StringComparison.Ordinal)));

    public override bool Fill(TurnDraft turn, OpenQuestion question, ImmutableArray<FilledField> fields) =>
        fields is [var only] && Step(turn, question) is ({ Limit: { } limit }, var page, var number)
        && Read(turn, page, number, limit, turn.Heard(only.Words));

    // Only a plain reading of the right quantity counts: "3 V and rising" or "it was 0 V before" proves nothing.
    private bool Read(TurnDraft turn, AccessPage page, int number, SafeLimit limit, string text)
    {
        ReadingContext context = ReadingContext.For(limit.Unit.Kind) with { DefaultUnit = limit.Unit };
        ReadingResult result = ReadingParser.Parse(text, context);
        if (result is ReadingResult.NotUnderstood) return false;
        if (result is not ReadingResult.Readings { List: [{ State: ReadingState.Number } reading], Unclear: null }
            || reading.Unit.Kind != limit.Unit.Kind || !IsPlain(text, reading, limit))
            return NotRead(turn, limit);
        if (Math.Abs(reading.Value) <= limit.AtMost)
        {
            turn.Say(SegmentKind.Understood, "understood-safe",
                Slot.Of("what", limit.Reading), Slot.Said("reading", ShownValue.Of(reading)));
            Confirm(turn, page, number, reading.Said);
        }
        else
            turn.Say(SegmentKind.Caution, "notice-not-safe",
                Slot.Said("reading", ShownValue.Of(reading)), Slot.Of("limit", limit.Text));
        return true;
    }

    private static bool NotRead(TurnDraft turn, SafeLimit limit)
    {
        turn.Say(SegmentKind.Notice, "notice-reading-not-understood",
            Slot.Of("quantity", limit.Reading), Slot.Of("unit", limit.Unit.Symbol, limit.Text.Place));
        return true;
    }

    private bool IsPlain(string text, Reading reading, SafeLimit limit)
    {
        ImmutableArray<string> known = [.. PlainWords.Of(reading.Said), .. PlainWords.Of(limit.Reading.Text)];
        return PlainWords.Of(text).All(word => known.Contains(word) || words.Means("words-reading", word));
    }

    private static void Confirm(TurnDraft turn, AccessPage page, int number, string? said)
    {
        turn.Happen(new StepConfirmed(page.Id.Value, number, said));
        if (AccessWay.Next(turn, page) is not null) return;
        turn.Happen(new AccessReached(page.Id.Value));
        turn.Say(SegmentKind.Understood, "access-reached", Slot.Of("access", page.Title));
    }

    private static (AccessStep Step, AccessPage Page, int Number)? Step(TurnDraft turn, OpenQuestion question)
    {
        if (!turn.Library.Access.TryGetValue(new AccessId(question.Subject), out var page)) return null;
        return AccessWay.Next(turn, page) is { } number ? (page.Steps[number], page, number) : null;
    }
}
