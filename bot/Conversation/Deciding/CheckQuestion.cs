using System.Collections.Immutable;
using DxAssistant.Conversation.Replies;
using DxAssistant.Conversation.Speaking;
using DxAssistant.Graph.Model;
using DxAssistant.Knowledge.Content.Model;
using DxAssistant.Knowledge.Readings;

namespace DxAssistant.Conversation.Deciding;

/// <summary>Asks a check: its cautions, how to do it, the one question, and what can be tapped or filled in.</summary>
internal static class CheckQuestion
{
    public static void Ask(TurnDraft turn, CheckPage page)
    {
        turn.Say(SegmentKind.Notice, "check-lead", Slot.Of("check", page.Title));
        Cautions.SayThoseOf(turn, page.Cautions);
        SayHow(turn, page);
        AskPlainly(turn, page);
    }

    // The drawings of the page belong to all of its steps; they come with the last.
    private static void SayHow(TurnDraft turn, CheckPage page)
    {
        ImmutableArray<Picture> drawn = [.. page.Pictures
            .Where(drawn => drawn.Series is null || drawn.Series == turn.View.Series?.Id).Select(PagePictures.Of)];
        for (int step = 0; step < page.How.Length; step++)
        {
            Segment how = turn.Speaker.Quote(SegmentKind.Instruction, page.How[step]);
            bool isLast = step == page.How.Length - 1;
            turn.Say(isLast && !drawn.IsEmpty ? how with { Pictures = drawn } : how);
        }
    }

    /// <summary>The question alone, when the rest was said before.</summary>
    public static void AskPlainly(TurnDraft turn, CheckPage page) =>
        turn.Ask(QuestionKind.Check, page.Id.Value, turn.Speaker.Quote(SegmentKind.Question, page.Ask),
            [.. page.Outcomes.Select(outcome => new Option(outcome.Id.Value, outcome.Answer.Text))],
            Fields(turn, page), Offered.AtCheck);

    /// <summary>The fields of the form, with what was already given for them.</summary>
    public static ImmutableArray<Field> Fields(TurnDraft turn, CheckPage page) =>
        [.. page.Readings.Select(field => new Field(field.Label,
            MarketUnits.Of(field.Unit, turn.View.Series?.Market).Symbol, field.Where.Text,
            turn.State.Given.FirstOrDefault(given => given.Label == field.Label)?.Words))];

    /// <summary>The page of a check that is still in the content and fits its graph; null when it is gone.</summary>
    public static CheckPage? Page(TurnDraft turn, string id) =>
        turn.Library.Checks.GetValueOrDefault(new CheckId(id));
}
