using System.Collections.Immutable;
using DxAssistant.Benchmarks.Fitting;
using DxAssistant.Knowledge.Content;
using DxAssistant.Knowledge.Search;
using DxAssistant.Knowledge.Search.Gates;
using DxAssistant.Knowledge.Search.Indexing;
using DxAssistant.Knowledge.Search.Requests;
using DxAssistant.Knowledge.Tests.Content;
using DxAssistant.Knowledge.Tests.Search;

namespace DxAssistant.Benchmarks.Groups;

/// <summary>Fits the gates of the matcher on the development sets, and never on a set for judging.</summary>
internal sealed class GatesGroup : IBenchmarkGroup
{
    private const string Complaints = "symptoms-dev";
    private const string MoreComplaints = "symptoms-dev-2";
    private const string Harmless = "harmless-dev";
    private const string Unsafe = "unsafe-dev";

    /// <summary>
    /// The sets, and how much a line of them counts: the last three were written when the pages' wordings stood.
    /// </summary>
    private static readonly ImmutableArray<(string Set, double Weight)> Sets =
        [("match", 1), ("match-dev", 1), ("match-dev-2", 1), ("match-dev-3", 1), ("match-dev-4", 1), ("match-dev-5", 1),
            ("match-dev-6", 1), ("match-dev-7", 1), ("match-dev-8", 1), ("match-dev-9", 1), ("match-dev-10", 1),
         (Complaints, 2), (MoreComplaints, 2), (Harmless, 3), (Unsafe, 2)];

    public string Name => "gates";

    public void Run(ResultFolder results)
    {
        var library = ContentCompiler.Compile(RepositoryFolder.Read("content")).Library
            ?? throw new InvalidOperationException("the shipped content does not compile");
        var index = SearchIndex.Build(SearchEntries.From(library), SearchEntries.Glossary(library));
        ImmutableArray<(string Set, double Weight, string Text, string Fault, HeardMessage Heard)> heard =
            [.. Sets.SelectMany(set => JudgedPhrase.Read($"{set.Set}.jsonl")
                .Select(line => (set.Set, set.Weight, line.Text, line.Fault, HeardMessage.Of(line.Text, index))))];
        var trade = new GateFit("Talk of something else", TradeGate.Gate, MatchThresholds.OtherTalk,
            [.. heard.Where(line => line.Fault != "refuse" && line.Set is not (Harmless or Unsafe))
                .Select(line => new FitLine(line.Set, line.Text, TradeGate.SignsOf(line.Heard), line.Fault == "none",
                    line.Weight))]);
        var danger = new GateFit("Dangerous requests", DangerGate.Gate, MatchThresholds.Unsafe,
            [.. heard.Where(line => !Intent.IsMereReport(line.Heard.Request))
                .Select(line => new FitLine(line.Set, line.Text, DangerGate.SignsOf(line.Heard), line.Fault == "refuse",
                    line.Weight))]);
        results.Write("gates.md", trade.Text() + danger.Text());
    }
}
