using System.Collections.Immutable;

namespace DxAssistant.Knowledge.Search;

/// <summary>Tells talk that is none of this trade's from complaints about a unit.</summary>
internal sealed class OffTopicTalk(SearchIndex index)
{
    /// <summary>First term of the glossary's concept "other equipment".</summary>
    private const string Other = "other";

    /// <summary>A fault so well described is of ours, whatever else is named.</summary>
    private const double ClearlyOurs = 0.8;

    /// <summary>Words before another machine that make it a mere place or comparison.</summary>
    private static readonly string[] Beside =
    [
        "over", "above", "behind", "on", "onto", "near", "next", "beside", "under", "below", "by", "from", "into", "like", "with",
        "to", "when", "off", "around", "against", "than", "neighbor", "whenever", "while", "in", "at",
    ];

    public bool IsOffTopic(ImmutableArray<Word> words, ImmutableArray<Token> tokens, TermBag said, double bestFault)
    {
        if (said.IsEmpty)
            return true;
        if (bestFault < ClearlyOurs && NamesAnotherMachine(words, tokens))
            return true;
        if (index.Known(said) < MatchThresholds.LeastKnown)
            return true;
        var talk = index.Find(TermBag.Of(tokens), NodeKind.OffTopic);
        return talk.Length > 0 && talk[0].Score >= MatchThresholds.OffTopic && talk[0].Score > bestFault;
    }

    /// <summary>The page of talk that fits best, or null if none comes near.</summary>
    public string? Page(ImmutableArray<Token> tokens)
    {
        var talk = index.Find(TermBag.Of(tokens), NodeKind.OffTopic);
        return talk.Length > 0 && talk[0].Score >= MatchThresholds.FaintestSymptom ? talk[0].Entry.Id : null;
    }

    private static bool NamesAnotherMachine(ImmutableArray<Word> words, ImmutableArray<Token> tokens) =>
        tokens.Any(token => token.Term == Other && token.Role == TokenRole.Main && !IsBeside(words, token.Position));

    private static bool IsBeside(ImmutableArray<Word> words, int position)
    {
        for (var i = Math.Max(0, position - 3); i < Math.Min(position, words.Length); i++)
        {
            if (Beside.Contains(words[i].Text))
                return true;
        }
        return false;
    }
}
