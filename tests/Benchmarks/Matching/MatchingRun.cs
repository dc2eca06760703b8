using System.Collections.Immutable;
using System.Diagnostics;
using DxAssistant.Benchmarks.Ratios;
using DxAssistant.Knowledge.Search;
using DxAssistant.Knowledge.Search.Indexing;
using DxAssistant.Knowledge.Search.Terms;

namespace DxAssistant.Benchmarks.Matching;

/// <summary>Makes a matcher and a plain search of the same pages and asks both the same messages.</summary>
internal static class MatchingRun
{
    /// <summary>How many messages one piece of work asks.</summary>
    public const int Messages = 50;

    public static MatchingPoint Of(
        string name, ImmutableArray<SearchEntry> pages, IEnumerable<SynonymGroup> glossary, ISymptomCauses causes,
        ImmutableArray<string> messages,
        ResultFolder results)
    {
        using var plain = new PlainSearch(pages);
        var before = GC.GetTotalMemory(true);
        var clock = Stopwatch.StartNew();
        var matcher = new Matcher(SearchIndex.Build(pages, glossary), causes);
        var seconds = clock.Elapsed.TotalSeconds;
        var bytes = GC.GetTotalMemory(true) - before;
        ImmutableArray<Workload> works =
            [Work("plain search", messages, plain.Faults), Work("matcher", messages, text => matcher.Match(text))];
        var turns = TakingTurns.Ratio(() => works[1].Act(), () => works[0].Act());
        var figures = RatioRun.Of(works, results);
        return new MatchingPoint(name, pages.Length, bytes, seconds, figures[0], figures[1], turns);
    }

    private static Workload Work(string name, ImmutableArray<string> messages, Func<string, object> ask) =>
        new(name, () =>
        {
            object? last = null;
            foreach (var message in messages)
                last = ask(message);
            return last;
        });
}
