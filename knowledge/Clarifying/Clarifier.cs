using System.Collections.Immutable;
using DxAssistant.Graph.Model;
using DxAssistant.Knowledge.Content.Model;

namespace DxAssistant.Knowledge.Clarifying;

/// <summary>Decides whether one question tells better what is meant than a list to choose from.</summary>
/// <remarks>
/// Both cost somebody's reading: a list all of its titles, a question its words, its answers, and the list that is left
/// after the answer. The question with the least expected reading is taken, of two alike the one with more information
/// (Shannon's mutual information of answer and symptom), and only if the list costs more. Titles that do not fit on the
/// list cost the whole way again.
/// </remarks>
public sealed class Clarifier(IEnumerable<QuestionPage> questions)
{
    /// <summary>How many titles a list shows.</summary>
    public const int LongestList = 5;

    // The words of "Which of these do you mean?" with "None of these", and of "Cannot say: show me all".
    private const double ListFrame = 11, QuestionFrame = 6;

    // Below this a question tells too little to be worth a turn: a yes or no that is nearly certain before. Common
    // practice, no source.
    private const double LeastBits = 0.5;

    // A turn more is worth so many words of reading; common practice, no source.
    private const double WordsPerTurn = 4;

    private readonly ImmutableArray<QuestionPage> _questions =
        [.. questions.OrderBy(page => page.Id, StringComparer.Ordinal)];

    /// <summary>The question to ask; null when a list is read sooner, or there is nothing to tell apart.</summary>
    public Clarification? Best(ImmutableArray<Candidate> candidates)
    {
        if (candidates.Length < 2) return null;
        double list = ReadingOfList(candidates);
        return _questions.Select(page => (Page: page, Ways: Ways(page, candidates)))
            .Where(asked => asked.Ways.Length > 1)
            .Select(asked => (Found: new Clarification(asked.Page, asked.Ways, Bits(asked.Page, candidates)),
                Reading: Reading(asked.Page, asked.Ways, candidates)))
            .Where(asked => asked.Found.Bits >= LeastBits && asked.Reading < list)
            .OrderBy(asked => asked.Reading).ThenByDescending(asked => asked.Found.Bits)
            .Select(asked => asked.Found).FirstOrDefault();
    }

    /// <summary>The question that tells most, whatever its length; null when none tells enough.</summary>
    public Clarification? MostTelling(ImmutableArray<Candidate> candidates) =>
        _questions.Select(page => new Clarification(page, Ways(page, candidates), Bits(page, candidates)))
            .Where(asked => asked.Ways.Length > 1 && asked.Bits >= LeastBits)
            .OrderByDescending(asked => asked.Bits).FirstOrDefault();

    private static ImmutableArray<ClarifiedWay> Ways(QuestionPage page, ImmutableArray<Candidate> candidates) =>
    [
        .. page.Answers.Select(answer => new ClarifiedWay(answer,
                [.. candidates.Select(candidate => candidate.Symptom.Id)
                    .Where(symptom => page.Allows(symptom, answer.Id))]))
            .Where(way => !way.Left.IsEmpty),
    ];

    // Where several answers fit a symptom, each is as likely.
    private static double Chance(QuestionPage page, SymptomId symptom, string answer) =>
        page.Allows(symptom, answer) ? 1.0 / page.Answers.Count(other => page.Allows(symptom, other.Id)) : 0;

    private static double Reading(QuestionPage page, ImmutableArray<ClarifiedWay> ways,
        ImmutableArray<Candidate> candidates)
    {
        double all = candidates.Sum(candidate => candidate.Weight);
        double question = QuestionFrame + Words(page.Ask.Text) + ways.Sum(way => Words(way.Answer.Shown.Text));
        return question + ways.Sum(way =>
            candidates.Sum(candidate => candidate.Weight / all * Chance(page, candidate.Symptom.Id, way.Answer.Id))
                * (way.Left.Length == 1 ? 0 : WordsPerTurn
                    + ReadingOfList([.. candidates.Where(candidate => way.Left.Contains(candidate.Symptom.Id))])));
    }

    private static double ReadingOfList(ImmutableArray<Candidate> candidates)
    {
        double shown = candidates.Take(LongestList).Sum(candidate => (double)Words(candidate.Symptom.Title.Text));
        double beyond = candidates.Skip(LongestList)
            .Sum(candidate => candidate.Weight) / candidates.Sum(candidate => candidate.Weight);
        return ListFrame + (shown * (1 + beyond)) + (beyond * WordsPerTurn);
    }

    private static double Bits(QuestionPage page, ImmutableArray<Candidate> candidates)
    {
        double all = candidates.Sum(candidate => candidate.Weight);
        double Entropy(IEnumerable<double> chances) =>
            -chances.Where(chance => chance > 0).Sum(chance => chance * Math.Log2(chance));
        double before = Entropy(
            page.Answers.Select(answer =>
                candidates.Sum(candidate => candidate.Weight / all * Chance(page, candidate.Symptom.Id, answer.Id))));
        double within = candidates.Sum(candidate => candidate.Weight / all
            * Entropy(page.Answers.Select(answer => Chance(page, candidate.Symptom.Id, answer.Id))));
        return Math.Round(before - within, 6);
    }

    // Each line costs the eye a little beside its words: one word more.
    private static int Words(string text) => text.Split(' ', StringSplitOptions.RemoveEmptyEntries).Length + 1;
}
