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
        "to", "when", "off", "around", "against", "than", "neighbor", "whenever", "while", "in", "at", "for",
    ];

    /// <summary>A machine named among the first words is what the message is about.</summary>
    private const int Beginning = 3;

    /// <param name="best">Score of the fault or symptom that fits best.</param>
    /// <param name="sureness">Probability of the likeliest fault.</param>
    public bool IsOffTopic(ImmutableArray<Word> words, ImmutableArray<Token> tokens, TermBag said, double best, double sureness, Intention intention)
    {
        var enough = index.SaysEnough(tokens);
        if (said.IsEmpty || !enough)
            return true;
        var other = OtherMachineAt(words, tokens);
        if (other is >= 0 and <= Beginning && best < MatchThresholds.ClearlyOurs)
            return true;
        if (other < 0 && index.NamesPart(tokens) && tokens.Any(token => token.IsNegated || States.Ill.Contains(token.Term)))
            return false;
        if (best >= MatchThresholds.ClearlyOurs)
            return intention.OffTopic > intention.Trade;
        return TradeGate.OfOtherTalk(intention, best, sureness, words.Length, enough, other >= 0) >= MatchThresholds.OtherTalk;
    }

    /// <summary>The page of talk that fits best, or null if none comes near.</summary>
    public string? Page(ImmutableArray<Token> tokens)
    {
        var talk = index.Find(TermBag.Of(tokens), NodeKind.OffTopic);
        return talk.Length > 0 && talk[0].Score >= MatchThresholds.FaintestSymptom ? talk[0].Entry.Id : null;
    }

    /// <summary>Whether a machine of another trade is what the message is about.</summary>
    public static bool NamesAnotherMachine(ImmutableArray<Word> words, ImmutableArray<Token> tokens) => OtherMachineAt(words, tokens) >= 0;

    /// <summary>The word at which a machine of another trade is named; −1 for none.</summary>
    private static int OtherMachineAt(ImmutableArray<Word> words, ImmutableArray<Token> tokens) =>
        tokens.Where((token, at) => token.Term == Unrelated && token.Role == TokenRole.Main
            && (tokens[at + 1].Term == Talk || !IsBeside(words, token.Position))).Select(token => token.Position).FirstOrDefault(-1);

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
