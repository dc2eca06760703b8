using DxAssistant.Knowledge.Search;
using DxAssistant.Knowledge.Search.Indexing;

namespace DxAssistant.Knowledge.Tests.Search;

public sealed class GlossaryTests
{
    [Fact]
    public void Glossary_EveryWording_LeadsToOneConcept()
    {
        var wordings = SearchEntries.Glossary(ShippedMatcher.Library)
            .SelectMany(group => group.Synonyms.Concat(group.Misspellings).Append(group.Concept).Distinct().Select(way => (Way: way.ToLowerInvariant(), group.Concept)));
        Assert.Empty(wordings.GroupBy(wording => wording.Way).Where(ways => ways.Select(way => way.Concept).Distinct().Count() > 1).Select(ways => ways.Key));
    }

    [Fact]
    public void Glossary_ShippedPage_HoldsHundredsOfWordings() =>
        Assert.True(SearchEntries.Glossary(ShippedMatcher.Library).Sum(group => group.Synonyms.Length) > 500);
}
