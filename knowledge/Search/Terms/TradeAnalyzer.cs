using System.Collections.Immutable;
using DxAssistant.Knowledge.Search.Clauses;

namespace DxAssistant.Knowledge.Search.Terms;

/// <summary>
/// Text to tokens: plain words, "not" bound to what it negates, stems, and the glossary's words for what was said.
/// </summary>
internal sealed class TradeAnalyzer(Thesaurus thesaurus)
{
    /// <summary>How many words a "not" reaches forward.</summary>
    private const int Reach = 3;

    private static readonly string[] Articles = ["the", "a", "an", "my", "your", "our", "this", "that", "his"];

    /// <summary>
    /// What "not" forbids to happen to the thing that follows: "can't keep the shop cool" rules no shop out.
    /// </summary>
    private static readonly string[] Causing = ["keep", "get", "make"];

    private static readonly string[] Alternatives = ["or", "nor"];

    public ImmutableArray<Token> Analyze(ImmutableArray<Word> words)
    {
        var plain = Negation.Normalize(words);
        ImmutableArray<string> said = [.. plain.Select(word => word.Text)];
        var stems = Stemmer.StemAll(said);
        var (row, stemRow) = (new WordRow(said), new WordRow(stems));
        var tokens = ImmutableArray.CreateBuilder<Token>();
        var negation = new OpenNegation();
        var covered = 0;
        for (var i = 0; i < said.Length; i++)
        {
            var (concept, length) = thesaurus.Find(row, stemRow, i);
            if (length > 1 && said[i] == "not" && thesaurus.Find(row, stemRow, i + 1).Length >= length)
                length = 0; // "no air in the system" is "no" and "air in the system", not "no air"
            negation.MoveTo(i, plain[i].StartsClause);
            if (length > 0 && i + length > covered && (length > 1 || i >= covered))
                AddConcept(tokens, negation, concept, plain, stems, i, length);
            else if (i >= covered)
                AddWord(tokens, negation, plain[i], i + 1 < said.Length ? said[i + 1] : null, stems[i], i);
            if (MainsVoltage.Says(said, i) is { } verdict)
                tokens.Add(new Token(verdict, said[i], i, false, TokenRole.Main));
            covered = Math.Max(covered, i + length);
        }
        return tokens.ToImmutable();
    }

    private static void AddConcept(ImmutableArray<Token>.Builder tokens, OpenNegation negation,
        ImmutableArray<string> concept, ImmutableArray<Word> words, ImmutableArray<string> stems, int at, int length)
    {
        if (concept.IsEmpty)
        {
            tokens.AddRange(Enumerable.Range(at, length)
                .Select(place => new Token(stems[place], words[place].Text, place, words[place].StartsClause,
                    TokenRole.Filler)));
            return;
        }
        var starts = words[at].StartsClause;
        var said = string.Join(' ', words.Skip(at).Take(length).Select(word => word.Text));
        var how = concept[0].StartsWith(Token.NotMark, StringComparison.Ordinal)
            ? NegationKind.None
            : negation.Take(at);
        foreach (var term in concept)
        {
            var last = term == concept[^1];
            tokens.Add(Make(term, said, at, starts, last || how == NegationKind.RulesOut ? how : NegationKind.None)
                with { IsConcept = true });
            (starts, said) = (false, "");
        }
        for (var i = at; i < at + length; i++)
        {
            if (words[i].Text != "not" && !Fillers.Contains(words[i].Text) && !concept.Contains(stems[i]))
                tokens.Add(new Token(stems[i], words[i].Text, at, false, TokenRole.Aside));
        }
    }

    private static void AddWord(
        ImmutableArray<Token>.Builder tokens, OpenNegation negation, Word word, string? next, string stem, int at)
    {
        if (word.Text is "not" or "without")
        {
            negation.Open(at, word.Text == "without");
            tokens.Add(new Token("not", "not", at, word.StartsClause, TokenRole.Filler));
            return;
        }
        if (Causing.Contains(word.Text) && next is { } after && Articles.Contains(after) && negation.IsOpenBefore(at))
        {
            negation.Take(at);
            tokens.Add(new Token(Token.NotMark + stem, word.Text, at, word.StartsClause, TokenRole.Main));
            return;
        }
        if (Fillers.Contains(word.Text))
        {
            negation.Pass(word.Text);
            tokens.Add(new Token(stem, word.Text, at, word.StartsClause, TokenRole.Filler));
            return;
        }
        var how = negation.Take(at);
        tokens.Add(Make(stem, word.Text, at, word.StartsClause, how));
        if (how == NegationKind.Negates)
            tokens.Add(new Token(stem, word.Text, at, false, TokenRole.Aside));
    }

    private static Token Make(string term, string said, int at, bool starts, NegationKind how) => how switch
    {
        NegationKind.Negates => new Token(Token.NotMark + term, said, at, starts, TokenRole.Main),
        NegationKind.RulesOut => new Token(term, said, at, starts, TokenRole.RuledOut),
        _ => new Token(term, said, at, starts, TokenRole.Main),
    };

    private enum NegationKind
    {
        None,
        Negates,
        RulesOut,
    }

    /// <summary>A "not" that still waits for its word, and whether an article came between ("not the drain").</summary>
    private sealed class OpenNegation
    {
        private int openedAt = -1;
        private bool sawArticle;
        private bool isWithout;
        private NegationKind last;
        private int lastAt = -1;

        /// <summary>Whether a "not" stands right before a place and waits.</summary>
        public bool IsOpenBefore(int at) => openedAt >= 0 && openedAt == at - 1;

        public void Open(int at, bool isWithout) => (openedAt, sawArticle, this.isWithout) = (at, false, isWithout);

        public void MoveTo(int at, bool startsClause)
        {
            if (startsClause || at - openedAt > Reach)
                openedAt = -1;
        }

        public void Pass(string filler)
        {
            sawArticle |= Articles.Contains(filler) || filler is "2" or "3" or "4";
            if (sawArticle && isWithout)
                openedAt = -1; // "works without the module" rules nothing out
            if (lastAt >= 0 && Alternatives.Contains(filler))
                (openedAt, sawArticle) = (lastAt + 1, last == NegationKind.RulesOut);
        }

        public NegationKind Take(int at)
        {
            var kind = openedAt < 0 ? NegationKind.None : sawArticle ? NegationKind.RulesOut : NegationKind.Negates;
            openedAt = -1;
            (last, lastAt) = kind == NegationKind.None ? (kind, -1) : (kind, at);
            return kind;
        }
    }
}
