using System.Collections.Immutable;
using DxAssistant.Benchmarks.Fitting;
using DxAssistant.Knowledge.Content;
using DxAssistant.Knowledge.Search;
using DxAssistant.Knowledge.Search.Gates;
using DxAssistant.Knowledge.Search.Indexing;
using DxAssistant.Knowledge.Search.Requests;
using DxAssistant.Knowledge.Search.Terms;
using DxAssistant.Knowledge.Tests.Content;
using DxAssistant.Knowledge.Tests.Search;

namespace DxAssistant.Benchmarks.Groups;

/// <summary>Fits the gates of the matcher on the development sets, and never on a set for judging.</summary>
internal sealed class GatesGroup : IBenchmarkGroup
{
    private const string Harmless = "harmless-dev";
    private const string Unsafe = "unsafe-dev";

    /// <summary>The sets, and how much a line of them counts.</summary>
    private static readonly ImmutableArray<(string Set, double Weight)> Sets =
        [("match", 1), ("match-dev", 1), ("match-dev-2", 1), ("match-dev-3", 1), ("match-dev-4", 1), ("match-dev-5", 1),
            ("match-dev-6", 1), ("match-dev-7", 1), ("match-dev-8", 1), ("match-dev-9", 1), ("match-dev-10", 1),
            ("match-dev-11", 1), ("symptoms-dev", 2), ("symptoms-dev-2", 2), (Harmless, 1), (Unsafe, 2),
            ("unsafe-dev-2", 2), ("unsafe-dev-3", 2), ("unsafe-dev-4", 2), ("unsafe-dev-5", 2), ("unsafe-dev-6", 2),
            ("unsafe-dev-7", 2), ("unsafe-dev-8", 2)];

    /// <summary>
    /// How much a complaint counts for the gate of dangers: one that is refused costs more than a request that is not.
    /// </summary>
    private const double ComplaintWeight = 6;

    /// <summary>Most lines are wordings of the pages: a line is heard by pages without its quarter of the lines.</summary>
    private const int Folds = 4;

    public string Name => "gates";

    public void Run(ResultFolder results)
    {
        var library = ContentCompiler.Compile(RepositoryFolder.Read("content")).Library
            ?? throw new InvalidOperationException("the shipped content does not compile");
        ImmutableArray<GateLine> heard = [.. HeardApart(SearchEntries.From(library), SearchEntries.Glossary(library))];
        var trade = new GateFit("Talk of something else", TradeGate.Gate, MatchThresholds.OtherTalk,
            [.. heard.Where(line => line.Phrase.Fault != "refuse" && line.Set != Harmless
                && !line.Set.StartsWith(Unsafe, StringComparison.Ordinal))
                .Select(line => line.Fit(TradeGate.SignsOf(line.Heard), line.Phrase.Fault == "none", line.Weight))]);
        var danger = new GateFit("Dangerous requests", DangerGate.Gate, MatchThresholds.Unsafe,
            [.. heard.Where(line => !Intent.IsMereReport(line.Heard.Request))
                .Select(line => line.Fit(WithoutRule(DangerGate.SignsOf(line.Heard)), line.Phrase.Fault == "refuse",
                    line.IsComplaint ? ComplaintWeight : line.Weight))]);
        results.Write("gates.md", trade.Text() + danger.Text());
    }

    // What stands on a page is like it beyond doubt, and would teach a gate nothing of what people will say.
    private static IEnumerable<GateLine> HeardApart(
        ImmutableArray<SearchEntry> entries, ImmutableArray<SynonymGroup> glossary)
    {
        ImmutableArray<(string Set, double Weight, JudgedPhrase Line)> lines =
            [.. Sets.SelectMany(set => JudgedPhrase.Read($"{set.Set}.jsonl")
                .Select(line => (set.Set, set.Weight, line)))];
        for (var fold = 0; fold < Folds; fold++)
        {
            ImmutableArray<(string Set, double Weight, JudgedPhrase Line)> held =
                [.. lines.Where((_, at) => at % Folds == fold)];
            var known = held.Select(line => Wording(line.Line.Text)).ToHashSet(StringComparer.Ordinal);
            var index = SearchIndex.Build(
                [.. entries.Select(entry => entry with
                {
                    Phrases = [.. entry.Phrases.Where(phrase => !known.Contains(Wording(phrase)))],
                })], glossary);
            foreach (var (set, weight, line) in held)
                yield return new GateLine(set, weight, line, HeardMessage.Of(line.Text, index));
        }
    }

    // A page may write a line with other marks than the set.
    private static string Wording(string text) => string.Concat(text.ToLowerInvariant().Where(char.IsLetterOrDigit));

    // The rules were mended on these lines: with them the gate would seem to need nothing else.
    private static double[] WithoutRule(double[] signs)
    {
        signs[DangerGate.Gate.Weights.Select(weight => weight.Sign).ToList().IndexOf("rule")] = 0;
        return signs;
    }
}
