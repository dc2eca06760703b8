using System.Collections.Concurrent;
using DxAssistant.Knowledge.Search.Terms;
using Lucene.Net.Index;
using Lucene.Net.Search;

namespace DxAssistant.Knowledge.Search.Indexing;

/// <summary>
/// How well pages fit the words as said, by BM25, synonyms apart. The score of a page is the sum of its scores for
/// each word, so Lucene is asked once a word and the answer kept: as many as the pages have words. May be asked by many
/// at once.
/// </summary>
internal sealed class PlainScores(IndexSearcher searcher)
{
    /// <summary>How many pages fit at most.</summary>
    private const int Looked = 400;

    private readonly ConcurrentDictionary<string, (int Page, float Score)[]> byStem = new(StringComparer.Ordinal);

    /// <summary>Writes down for the best pages how well they fit.</summary>
    /// <param name="best">The score of a perfect fit.</param>
    public void Score(TermBag said, float best, Span<PageFit> fits)
    {
        using var scratch = new Scratch<double>(fits.Length);
        var sums = scratch.AsSpan();
        foreach (var stem in said.Plain.Order(StringComparer.Ordinal))
        {
            foreach (var (page, score) in Scores(stem))
                sums[page] += score;
        }
        KeepBest(sums);
        for (var page = 0; page < fits.Length; page++)
        {
            if (sums[page] > 0)
                fits[page].Plain = Math.Min(1.0, (float)sums[page] / best);
        }
    }

    // Of pages that fit alike the first ones.
    private static void KeepBest(Span<double> sums)
    {
        var found = sums.Length - sums.Count(0.0);
        if (found <= Looked)
            return;
        var best = new PriorityQueue<double, double>(Looked);
        foreach (var sum in sums)
        {
            if (best.Count < Looked)
                best.Enqueue(sum, sum);
            else if (sum > best.Peek())
                best.EnqueueDequeue(sum, sum);
        }
        var least = best.Dequeue();
        var atLeast = 1;
        while (best.Count > 0 && best.Dequeue() == least)
            atLeast++;
        foreach (ref var sum in sums)
        {
            if (sum < least || (sum == least && atLeast-- <= 0))
                sum = 0;
        }
    }

    // What no page has is not kept: there is no end of such words.
    private (int Page, float Score)[] Scores(string stem)
    {
        if (byStem.TryGetValue(stem, out var known))
            return known;
        var term = new Term(Fields.Plain, stem);
        var pages = searcher.IndexReader.DocFreq(term);
        return pages == 0
            ? []
            : byStem.GetOrAdd(stem,
                [.. searcher.Search(new TermQuery(term), pages).ScoreDocs.Select(hit => (hit.Doc, hit.Score))]);
    }
}
