using DxAssistant.Knowledge.Search;
using DxAssistant.Knowledge.Search.Indexing;
using DxAssistant.Knowledge.Search.Terms;

namespace DxAssistant.Knowledge.Tests.Search;

public sealed class GlossaryTests
{
    private static readonly Lazy<SearchIndex> Index =
        new(() => SearchIndex.Build([], SearchEntries.Glossary(ShippedMatcher.Library)));

    [Fact]
    public void Glossary_EveryWording_LeadsToOneConcept()
    {
        var wordings = SearchEntries.Glossary(ShippedMatcher.Library)
            .SelectMany(group => group.Synonyms.Concat(group.Misspellings).Append(group.Concept).Distinct()
                .Select(way => (Way: way.ToLowerInvariant(), group.Concept)));
        Assert.Empty(wordings.GroupBy(wording => wording.Way)
            .Where(ways => ways.Select(way => way.Concept).Distinct().Count() > 1).Select(ways => ways.Key));
    }

    // Words that only share a stem, or stand in a wording of everyday life, name nothing of the trade.
    [Theory]
    [InlineData("unit on the ground floor", "ground")]
    [InlineData("single phase supply", "miss")]
    [InlineData("quite warm here", "not~work")]
    [InlineData("several rooms", "broken")]
    [InlineData("the whole house", "case")]
    [InlineData("in this case", "case")]
    [InlineData("for a short while", "circuit")]
    [InlineData("reversing valve", "revers")]
    [InlineData("on warm evenings", "even")]
    [InlineData("put a rag there", "rat")]
    public void Analyze_WordInAnotherSense_NamesNothing(string text, string term)
    {
        var tokens = Index.Value.Analyze(Index.Value.Words(text));
        Assert.DoesNotContain(tokens, token => token.Term == term && token.Role == TokenRole.Main);
    }

    [Theory]
    [InlineData("earth fault on the compressor", "ground")]
    [InlineData("fan quit", "not~work")]
    [InlineData("cable severed", "broken")]
    [InlineData("it runs on two phases, single phasing", "miss")]
    public void Analyze_TheSameInItsOwnSense_NamesIt(string text, string term) =>
        Assert.Contains(Index.Value.Analyze(Index.Value.Words(text)), token => token.Term == term
            && token.Role == TokenRole.Main);

    [Fact]
    public void Glossary_ShippedPage_HoldsHundredsOfWordings() =>
        Assert.True(SearchEntries.Glossary(ShippedMatcher.Library).Sum(group => group.Synonyms.Length) > 500);
}
