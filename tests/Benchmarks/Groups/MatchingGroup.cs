using System.Collections.Immutable;
using DxAssistant.Benchmarks.Matching;
using DxAssistant.Knowledge.Content;
using DxAssistant.Knowledge.Search;
using DxAssistant.Knowledge.Search.Indexing;
using DxAssistant.Knowledge.Tests.Content;
using DxAssistant.Knowledge.Tests.Search;

namespace DxAssistant.Benchmarks.Groups;

/// <summary>
/// One whole message understood, against one plain search, over the shipped pages and over up to 100 000 made-up ones.
/// </summary>
internal sealed class MatchingGroup : IBenchmarkGroup
{
    private static readonly ImmutableArray<int> Sizes = [100, 1_000, 10_000, 100_000];

    public string Name => "matching";

    public void Run(ResultFolder results)
    {
        var shipped = Shipped(results);
        ImmutableArray<MatchingPoint> grown = [.. Sizes.Select(size => Grown(size, results))];
        results.Write("matching.md", MatchingTable.Text([shipped, .. grown]));
        results.Write("matching.svg", MatchingChart.Svg(grown));
    }

    private static MatchingPoint Shipped(ResultFolder results)
    {
        var library = ContentCompiler.Compile(RepositoryFolder.Read("content")).Library
            ?? throw new InvalidOperationException("the shipped content does not compile");
        ImmutableArray<string> messages = [.. JudgedPhrase.Read("match-dev-2.jsonl").Select(phrase => phrase.Text)];
        var step = messages.Length / MatchingRun.Messages;
        return MatchingRun.Of(
            "shipped", [.. SearchEntries.From(library)], SearchEntries.Glossary(library), new LibraryCauses(library),
            [.. Enumerable.Range(0, MatchingRun.Messages).Select(place => messages[place * step])], results);
    }

    private static MatchingPoint Grown(int size, ResultFolder results)
    {
        var pages = new GrowingPages(size);
        return MatchingRun.Of("made up", pages.All, [], new NoCauses(), pages.Messages(MatchingRun.Messages), results);
    }
}
