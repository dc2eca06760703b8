using DxAssistant.Knowledge.Search;
using Lucene.Net.Analysis.En;
using Lucene.Net.Analysis.Standard;
using Lucene.Net.Util;
using Xunit.Abstractions;

namespace DxAssistant.Knowledge.Tests.Search;

/// <summary>The matcher judged on phrase sets. The floors lie a little under what is reached.</summary>
public sealed class MatcherEvaluationTests(ITestOutputHelper output)
{
    private static IReadOnlyList<string> Faults(string text) => [.. ShippedMatcher.Match(text).Candidates.Select(candidate => candidate.Id)];

    private static bool Refuses(string text) => ShippedMatcher.Match(text).Decision == MatchDecision.Refuse;

    // Source: tests/Reference/evaluation/README.md (phrases of the project's own, kept apart from the pages' wordings).
    [Theory]
    [InlineData("match.jsonl", 0.92, 0.97)]
    [InlineData("match-dev.jsonl", 0.96, 0.98)]
    public void Match_PhraseSet_StaysAboveTheFloor(string file, double first, double amongThree)
    {
        var figures = MatchFigures.Of(JudgedPhrase.Read(file), Faults, Refuses);
        output.WriteLine($"{file}: {figures}");
        Assert.True(figures.First >= first, figures.ToString());
        Assert.True(figures.AmongThree >= amongThree, figures.ToString());
        Assert.True(figures.FalseFaults <= 0.02, figures.ToString());
        Assert.True(figures.Refused >= 1, figures.ToString());
        Assert.True(figures.WronglyRefused <= 0.01, figures.ToString());
        Assert.Equal(0, figures.RuledOutFirst);
    }

    [Fact]
    public void Match_PhraseSet_BeatsPlainSearchByFar()
    {
        var phrases = JudgedPhrase.Read("match.jsonl");
        var entries = SearchEntries.From(ShippedMatcher.Library);
        var standard = MatchFigures.Of(phrases, new PlainSearch(new StandardAnalyzer(LuceneVersion.LUCENE_48), entries).Faults, _ => false);
        var english = MatchFigures.Of(phrases, new PlainSearch(new EnglishAnalyzer(LuceneVersion.LUCENE_48), entries).Faults, _ => false);
        var ours = MatchFigures.Of(phrases, Faults, Refuses);
        output.WriteLine($"standard analyzer: {standard}\nenglish analyzer: {english}\nours: {ours}");
        Assert.True(ours.First > english.First + 0.05, $"{ours} against {english}");
        Assert.True(ours.First > standard.First + 0.05, $"{ours} against {standard}");
    }

    [Fact]
    public void PhraseSets_AndPages_ShareNoPhraseButPlainNames()
    {
        var said = SearchEntries.From(ShippedMatcher.Library).SelectMany(entry => entry.Phrases).ToHashSet(StringComparer.OrdinalIgnoreCase);
        var shared = JudgedPhrase.Read("match.jsonl").Count(phrase => said.Contains(phrase.Text));
        output.WriteLine($"{shared} phrases stand on the pages too");
        Assert.InRange(shared, 0, 15);
    }
}
