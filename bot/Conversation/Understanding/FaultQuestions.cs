using System.Collections.Immutable;
using DxAssistant.Conversation.Speaking;
using DxAssistant.Graph.Model;
using DxAssistant.Knowledge.Content.Model;
using DxAssistant.Knowledge.Search;

namespace DxAssistant.Conversation.Understanding;

/// <summary>Hears a question about one fault, such as "why not the fan motor", and answers it.</summary>
internal sealed class FaultQuestions(PhraseBook phrases, IMatcher matcher)
{
    // A fault in question goes before one that is not and fits the words up to twice as well: common practice, no
    // source.
    private const double Near = 0.5;

    /// <summary>The words such a question begins with: a list in the phrase file.</summary>
    public const string Beginnings = "words-why-not";

    private readonly ImmutableArray<string> _beginnings = PhraseLists.Beginnings(phrases, Beginnings);

    /// <returns>False when the words are no such question, name no fault, or nothing is in question yet.</returns>
    public bool Hear(TurnDraft turn, string text)
    {
        if (turn.State.Symptoms.IsEmpty || Asked(PlainWords.Joined(text)) is not { } words
            || Meant(turn, words) is not { } page)
            return false;
        WhyFaultSpeech.Say(turn, page);
        return true;
    }

    private string? Asked(string said) =>
        _beginnings.FirstOrDefault(words => said.StartsWith(words + " ", StringComparison.Ordinal)) is { } beginning
            ? said[(beginning.Length + 1)..] : null;

    // The likeliest fault whose title holds all the words; else the best that fits them, one in question before others.
    private FaultPage? Meant(TurnDraft turn, string words)
    {
        ImmutableArray<string> asked = PlainWords.Telling(words);
        FaultPage? titled = turn.Library.Faults.Values.Where(page => !asked.IsEmpty
            && !asked.Except(PlainWords.Telling(page.Title.Text)).Any())
            .OrderByDescending(page => IsCandidate(turn, page.Id))
            .ThenByDescending(page => turn.View.Belief.ProbabilityOf(page.Id))
            .ThenBy(page => page.Title.Text.Length).ThenBy(page => page.Id).FirstOrDefault();
        if (titled is not null) return titled;
        ImmutableArray<MatchCandidate> fitting = matcher.Match(words, turn.State.Series).Candidates;
        MatchCandidate? meant = fitting.FirstOrDefault(hit => hit.Score >= Near * fitting[0].Score
            && IsCandidate(turn, new FaultId(hit.Id)));
        return (meant ?? fitting.FirstOrDefault()) is { } found ? turn.Library.Faults[new FaultId(found.Id)] : null;
    }

    private static bool IsCandidate(TurnDraft turn, FaultId fault) =>
        turn.View.Belief.Ranked.Any(ranked => ranked.Id == fault);
}
