using DxAssistant.Knowledge.Search.Terms;

namespace DxAssistant.Knowledge.Search.Indexing;

/// <summary>How much wordings say, counting rare words more than common ones.</summary>
internal sealed class Closeness(Rarity rarity)
{
    /// <summary>
    /// 1 for wordings that share all they say, 0 for none of it; words said too much cost less than words left out.
    /// </summary>
    /// <param name="shared">How much both say.</param>
    /// <param name="said">The <see cref="Total"/> of what was said.</param>
    /// <param name="wording">The <see cref="Total"/> of the wording.</param>
    public static double Of(double shared, double said, double wording) =>
        shared / (shared + (Weights.Unmatched * (said - shared)) + (Weights.Unsaid * (wording - shared)));

    /// <summary>About the score of a page that has every plain word said.</summary>
    public float BestPlain(TermBag said) => (float)Math.Max(1e-6, 1.6 * said.Plain.Sum(rarity.OfPlain));

    /// <summary>How much a wording says in all.</summary>
    public double Total(TermBag bag) =>
        bag.Terms.Sum(term => term.Value * OfTerm(term.Key)) + bag.Pairs.Sum(OfPair);

    public double OfTerm(string term) => rarity.OfTerm(term);

    public double OfPair(string pair) =>
        (pair.Contains(TermBag.ShingleMark, StringComparison.Ordinal) ? Weights.Shingle : Weights.Pair)
            * rarity.OfPair(pair);
}
