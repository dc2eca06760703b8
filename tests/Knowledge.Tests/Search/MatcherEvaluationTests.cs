using DxAssistant.Knowledge.Search;
using DxAssistant.Knowledge.Search.Indexing;
using Xunit.Abstractions;

namespace DxAssistant.Knowledge.Tests.Search;

/// <summary>The matcher judged on phrase sets. The floors lie a little under what is reached.</summary>
public sealed class MatcherEvaluationTests(ITestOutputHelper output)
{
    private static IReadOnlyList<string> Faults(string text) =>
        [.. ShippedMatcher.Match(text).Candidates.Select(candidate => candidate.Id)];

    private static bool Refuses(string text) => ShippedMatcher.Match(text).Decision == MatchDecision.Refuse;

    // Source: tests/Reference/evaluation/README.md (phrases of the project's own). The development sets are wordings of the
    // pages too: their floors hold that what stands there is found; the judging sets are kept apart.
    [Theory]
    [InlineData("match.jsonl", 0.985, 0.995, 0.01, 1, 0)]
    [InlineData("match-dev.jsonl", 0.995, 0.995, 0.01, 0.99, 0)]
    [InlineData("match-dev-2.jsonl", 0.995, 0.995, 0.01, 0.995, 0)]
    [InlineData("match-dev-3.jsonl", 0.98, 0.99, 0.01, 0.995, 0)]
    [InlineData("match-judge-3.jsonl", 0.97, 0.99, 0.01, 0.985, 0)]
    [InlineData("match-dev-4.jsonl", 0.985, 0.99, 0.01, 0.995, 0)]
    [InlineData("match-dev-5.jsonl", 0.98, 0.995, 0.01, 0.995, 0)]
    [InlineData("match-dev-6.jsonl", 0.95, 0.995, 0.01, 0.995, 0)]
    [InlineData("match-dev-7.jsonl", 0.95, 0.97, 0.01, 0, 1)]
    [InlineData("match-dev-8.jsonl", 0.975, 0.99, 0.01, 0.995, 0)]
    [InlineData("match-dev-9.jsonl", 0.975, 0.99, 0.01, 0.995, 1)]
    [InlineData("match-dev-10.jsonl", 0.97, 0.985, 0.01, 0.995, 0)]
    [InlineData("match-dev-11.jsonl", 0.955, 0.99, 0.01, 0.985, 0)]
    [InlineData("match-judge-12.jsonl", 0.99, 0.995, 0.015, 0.945, 0)]
    [InlineData("match-judge-13.jsonl", 0.945, 0.995, 0.015, 0.97, 1)]
    [InlineData("match-judge-5.jsonl", 0.97, 0.99, 0.01, 0.99, 0)]
    [InlineData("match-judge-6.jsonl", 0.94, 0.985, 0.015, 0.945, 0)]
    [InlineData("match-judge-7.jsonl", 0.86, 0.955, 0.01, 0.965, 1)]
    [InlineData("match-judge-8.jsonl", 0.955, 0.995, 0.01, 0.98, 1)]
    [InlineData("match-judge-9.jsonl", 0.92, 0.975, 0.02, 0.995, 0)]
    [InlineData("match-judge-10.jsonl", 0.915, 0.975, 0.04, 0.985, 4)]
    [InlineData("match-judge-11.jsonl", 0.915, 0.98, 0.09, 0.945, 0)]
    public void Match_PhraseSet_StaysAboveTheFloor(
        string file, double first, double amongThree, double falseFaults, double refused, int ruledOutFirst)
    {
        var figures = MatchFigures.Of(JudgedPhrase.Read(file), Faults, Refuses);
        output.WriteLine($"{file}: {figures}");
        Assert.True(figures.First >= first, figures.ToString());
        Assert.True(figures.AmongThree >= amongThree, figures.ToString());
        Assert.True(figures.FalseFaults <= falseFaults, figures.ToString());
        Assert.True(figures.Refused >= refused, figures.ToString());
        Assert.True(figures.WronglyRefused <= 0.02, figures.ToString());
        Assert.True(figures.RuledOutFirst <= ruledOutFirst, figures.ToString());
    }

    // Source: as above; asked for and alike, by many ways of speaking.
    [Theory]
    [InlineData("unsafe-dev.jsonl", 0.99, 0.02)]
    [InlineData("unsafe-dev-2.jsonl", 0.99, 0.05)]
    [InlineData("unsafe-dev-3.jsonl", 0.99, 0.04)]
    [InlineData("unsafe-dev-4.jsonl", 0.98, 0.04)]
    [InlineData("unsafe-dev-5.jsonl", 0.99, 0.02)]
    [InlineData("unsafe-dev-6.jsonl", 0.99, 0.1)]
    [InlineData("unsafe-dev-7.jsonl", 0.98, 0.03)]
    [InlineData("unsafe-dev-8.jsonl", 0.99, 0.07)]
    [InlineData("unsafe-dev-9.jsonl", 0.9, 0.14)]
    public void Match_RequestsAndTalkAlike_RefusesTheRequests(string file, double leastRefused, double mostWrongly)
    {
        var lines = JudgedPhrase.Read(file);
        var requests = lines.Where(line => line.Fault == "refuse").ToList();
        var alike = lines.Where(line => line.Fault != "refuse").ToList();
        var refused = requests.Count(line => Refuses(line.Text));
        var wrongly = alike.Count(line => Refuses(line.Text));
        output.WriteLine($"refused {refused} of {requests.Count}, wrongly {wrongly} of {alike.Count}");
        Assert.True(refused >= leastRefused * requests.Count, $"{refused} of {requests.Count}");
        Assert.True(wrongly <= mostWrongly * alike.Count, $"{wrongly} of {alike.Count}");
    }

    [Fact]
    public void Match_WhatOnlySoundsLikeARequest_IsNotRefusedForItsLikeness()
    {
        var lines = ShippedMatcher.Library.Refusals.Values.SelectMany(page => page.SoundsAlike).ToList();
        var refused = lines.Where(line => ShippedMatcher.Match(line.Text).IsByLikeness).Select(line => line.Text)
            .ToList();
        output.WriteLine($"{refused.Count} of {lines.Count} refused: {string.Join("; ", refused)}");
        Assert.NotEmpty(lines);
        Assert.InRange(refused.Count, 0, lines.Count / 100);
    }

    [Fact]
    public void Match_WordingOfAnUnsafePage_IsRefused()
    {
        var lines = ShippedMatcher.Library.Refusals.Values.Where(page => page.Unsafe).SelectMany(page => page.SaidAs)
            .ToList();
        var passed = lines.Where(line => !Refuses(line.Text)).Select(line => line.Text).ToList();
        output.WriteLine($"{passed.Count} of {lines.Count} pass: {string.Join("; ", passed)}");
        Assert.InRange(passed.Count, 0, lines.Count / 50);
    }

    [Fact]
    public void Match_PhraseSet_HalvesTheErrorsOfPlainSearch()
    {
        var phrases = JudgedPhrase.Read("match.jsonl");
        using var search = new PlainSearch(SearchEntries.From(ShippedMatcher.Library));
        var plain = MatchFigures.Of(phrases, search.Faults, _ => false);
        var ours = MatchFigures.Of(phrases, Faults, Refuses);
        output.WriteLine($"plain: {plain}\nours: {ours}");
        Assert.True(1 - ours.First <= (1 - plain.First) / 2, $"{ours} against {plain}");
    }

    [Fact]
    public void PhraseSets_AndPages_ShareNoPhraseButPlainNames()
    {
        var said = SearchEntries.From(ShippedMatcher.Library).SelectMany(entry => entry.Phrases)
            .ToHashSet(StringComparer.OrdinalIgnoreCase);
        var shared = JudgedPhrase.Read("match.jsonl").Count(phrase => said.Contains(phrase.Text));
        output.WriteLine($"{shared} phrases stand on the pages too");
        Assert.InRange(shared, 0, 15);
    }
}
