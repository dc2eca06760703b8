using System.Collections.Immutable;
using DxAssistant.Conversation.Replies;
using DxAssistant.Conversation.Understanding.Answers;
using DxAssistant.Graph.Model;
using DxAssistant.Knowledge.Clarifying;
using DxAssistant.Knowledge.Content.Model;
using DxAssistant.Knowledge.Search;
using DxAssistant.Knowledge.Search.Indexing;

namespace DxAssistant.Conversation.Understanding;

/// <summary>
/// Asks which of several symptoms is meant: by one short question where that is read sooner, else by a list.
/// </summary>
internal static class Clarifying
{
    private const char Between = '+';

    private static readonly MatchResult Nothing = new(MatchDecision.Clarify, [], [], null, [], []);

    /// <summary>Asks the question that tells most.</summary>
    /// <returns>False when a list is better.</returns>
    public static bool Ask(TurnDraft turn, MatchResult match, ImmutableArray<SymptomPage> offered) =>
        Ask(turn, Offering.Question(turn.Library, match, offered), [.. offered.Select(page => page.Id)]);

    /// <summary>Asks what kind of trouble it is.</summary>
    public static void AskGenerally(TurnDraft turn, Clarification general)
    {
        turn.Say(SegmentKind.Notice, "notice-code-first");
        Ask(turn, general, [.. general.Ways.SelectMany(way => way.Left).Distinct()]);
    }

    private static bool Ask(TurnDraft turn, Clarification? found, ImmutableArray<SymptomId> all)
    {
        if (found is null) return false;
        turn.Ask(QuestionKind.Symptom, found.Question.Id, turn.Speaker.Quote(SegmentKind.Question, found.Question.Ask),
            [
                .. found.Ways.Select(way => new Option(Key(way.Left), way.Answer.Shown.Text)),
                new Option(Key(all) + Between, turn.Speaker.Text("option-show-all")),
            ], [], Offered.Always);
        return true;
    }

    /// <summary>Lists the symptoms to choose from.</summary>
    /// <param name="most">How many at most.</param>
    public static void Choose(TurnDraft turn, ImmutableArray<SymptomPage> offered, int most = Clarifier.LongestList) =>
        turn.Ask(QuestionKind.Symptom, "", offered.Length == 1 ? "ask-symptom-one" : "ask-symptom",
            [.. offered.Take(most).Select(page => new Option(page.Id.Value, page.Title.Text)),
                turn.Option(SymptomAnswer.None, "option-none-of-these")]);

    /// <summary>Asks on about the symptoms that are left after an answer, or lists them.</summary>
    /// <returns>False when the key is that of one symptom, or of none.</returns>
    public static bool ChooseLeft(TurnDraft turn, string key)
    {
        if (!key.Contains(Between)) return false;
        ImmutableArray<SymptomPage> left = [.. key.Split(Between, StringSplitOptions.RemoveEmptyEntries)
            .Select(id => turn.Library.Symptoms.GetValueOrDefault(new SymptomId(id))).OfType<SymptomPage>()];
        bool asksForAll = IsForAll(key);
        if (asksForAll) Choose(turn, left, left.Length);
        else if (left.Length <= Clarifier.LongestList || !Ask(turn, Nothing, left)) Choose(turn, left);
        return true;
    }

    /// <summary>Whether a key stands for "cannot say: show me all".</summary>
    public static bool IsForAll(string key) => key.EndsWith(Between);

    private static string Key(ImmutableArray<SymptomId> symptoms) =>
        string.Join(Between, symptoms.Select(symptom => symptom.Value));
}
