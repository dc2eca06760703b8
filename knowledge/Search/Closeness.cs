namespace DxAssistant.Knowledge.Search;

/// <summary>How close two wordings are, counting rare words more than common ones.</summary>
internal sealed class Closeness(Rarity rarity)
{
    /// <summary>1 for the same words, 0 for none in common; words said too much cost less than words left out.</summary>
    /// <param name="all">The <see cref="Total"/> of <paramref name="said"/>.</param>
    /// <param name="allOfPhrase">The <see cref="Total"/> of <paramref name="phrase"/>.</param>
    public double Of(TermBag said, double all, TermBag phrase, double allOfPhrase)
    {
        if (said.Exact == phrase.Exact && said.Exact.Length > 0)
            return 1;
        var shared = Shared(said, phrase);
        var missed = all - shared;
        var unsaid = allOfPhrase - shared;
        return shared / (shared + (Weights.Unmatched * missed) + (Weights.Unsaid * unsaid));
    }

    /// <summary>About the score of a page that has every word and pair said.</summary>
    public float BestPossible(TermBag said) => (float)Math.Max(1e-6, 1.6 * Total(said));

    /// <summary>About the score of a page that has every plain word said.</summary>
    public float BestPlain(TermBag said) => (float)Math.Max(1e-6, 1.6 * said.Plain.Sum(rarity.OfPlain));

    /// <summary>How much a wording says in all.</summary>
    public double Total(TermBag bag) =>
        bag.Terms.Sum(term => term.Value * rarity.OfTerm(term.Key)) + bag.Pairs.Sum(OfPair);

    private double Shared(TermBag one, TermBag other)
    {
        double shared = 0;
        foreach (var (term, weight) in one.Terms)
        {
            if (other.Terms.TryGetValue(term, out var also))
                shared += Math.Min(weight, also) * rarity.OfTerm(term);
        }
        foreach (var pair in one.Pairs)
            shared += other.Pairs.Contains(pair) ? OfPair(pair) : 0;
        return shared;
    }

    private double OfPair(string pair) =>
        (pair.Contains(TermBag.ShingleMark, StringComparison.Ordinal) ? Weights.Shingle : Weights.Pair) * rarity.OfPair(pair);
}
