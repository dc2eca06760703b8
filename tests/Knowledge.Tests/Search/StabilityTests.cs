using System.Collections.Immutable;
using DxAssistant.Knowledge.Search;
using DxAssistant.Knowledge.Search.Indexing;
using Xunit.Abstractions;

namespace DxAssistant.Knowledge.Tests.Search;

/// <summary>One wording more or less on a page must not move answers that have nothing to do with it.</summary>
public sealed class StabilityTests(ITestOutputHelper output)
{
    private static readonly ImmutableArray<JudgedPhrase> Phrases = JudgedPhrase.Read("match-dev.jsonl");
    private static readonly ImmutableArray<SearchEntry> Pages = [.. SearchEntries.From(ShippedMatcher.Library)];

    [Fact]
    public void Match_UnrelatedWordingAdded_KeepsNearlyAllAnswers()
    {
        var at = Pages.IndexOf(Pages.Single(page => page is { Kind: NodeKind.Fault, Id: "filter-blocked" }));
        var page = Pages[at] with { Phrases = Pages[at].Phrases.Add("the mesh screens are matted with dog fur") };
        AssertSteady(Pages.SetItem(at, page));
    }

    [Fact]
    public void Match_OneWordingLeftOut_KeepsNearlyAllAnswers()
    {
        var at = Pages.IndexOf(Pages.Single(page => page is { Kind: NodeKind.Fault, Id: "drain-blocked" }));
        AssertSteady(
            Pages.SetItem(at, Pages[at] with { Phrases = Pages[at].Phrases.RemoveAt(Pages[at].Phrases.Length / 2) }));
    }

    /// <summary>Of some 500 phrases at most 2 may get another decision or another first fault.</summary>
    private void AssertSteady(IEnumerable<SearchEntry> pages)
    {
        const int mostMoved = 2;
        var other = new Matcher(SearchIndex.Build(pages, SearchEntries.Glossary(ShippedMatcher.Library)),
            new LibraryCauses(ShippedMatcher.Library));
        ImmutableArray<string> moved =
            [.. Phrases.Select(phrase => phrase.Text)
                .Where(text => Answer(ShippedMatcher.Match(text)) != Answer(other.Match(text)))];
        output.WriteLine(string.Join('\n', moved));
        Assert.InRange(moved.Length, 0, mostMoved);
    }

    private static (MatchDecision, string?) Answer(MatchResult result) =>
        (result.Decision, result.Candidates.Select(candidate => candidate.Id).FirstOrDefault());
}
