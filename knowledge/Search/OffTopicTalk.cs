using System.Collections.Immutable;

namespace DxAssistant.Knowledge.Search;

/// <summary>Tells talk that is none of this trade's from complaints about a unit.</summary>
internal sealed class OffTopicTalk(SearchIndex index)
{
    /// <summary>First term of the glossary's concepts "unrelated equipment" and "unrelated talk".</summary>
    private static readonly string Unrelated = Stemmer.StemAll(["unrelated"])[0];

    private static readonly string Talk = Stemmer.StemAll(["talk"])[0];

    /// <summary>Words before another machine that make it a mere place or comparison.</summary>
    private static readonly string[] Beside =
    [
        "over", "above", "behind", "on", "onto", "near", "next", "beside", "under", "below", "by", "from", "into", "like", "with",
        "to", "when", "off", "around", "against", "than", "neighbor", "whenever", "while", "in", "at",
    ];

    /// <param name="best">Score of the fault or symptom that fits best.</param>
    public bool IsOffTopic(ImmutableArray<Word> words, ImmutableArray<Token> tokens, TermBag said, double best)
    {
        if (said.IsEmpty || !index.SaysEnough(tokens))
            return true;
        var talk = index.Find(TermBag.Of(tokens), NodeKind.OffTopic).FirstOrDefault()?.Score ?? 0;
        if (NamesAnotherMachine(words, tokens) && (best < MatchThresholds.ClearlyOurs || talk > best))
            return true;
        var least = index.NamesPart(tokens) ? MatchThresholds.LeastKnownOfPart : MatchThresholds.LeastKnown;
        return index.Known(said) < least || (talk >= MatchThresholds.OffTopic && talk > best);
    }

    /// <summary>The page of talk that fits best, or null if none comes near.</summary>
    public string? Page(ImmutableArray<Token> tokens)
    {
        var talk = index.Find(TermBag.Of(tokens), NodeKind.OffTopic);
        return talk.Length > 0 && talk[0].Score >= MatchThresholds.FaintestSymptom ? talk[0].Entry.Id : null;
    }

    /// <summary>Whether a machine of another trade is what the message is about.</summary>
    public static bool NamesAnotherMachine(ImmutableArray<Word> words, ImmutableArray<Token> tokens) =>
        tokens.Where((token, at) => token.Term == Unrelated && token.Role == TokenRole.Main
            && (tokens[at + 1].Term == Talk || !IsBeside(words, token.Position))).Any();

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
