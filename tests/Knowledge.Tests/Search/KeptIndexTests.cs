using System.Collections.Immutable;
using DxAssistant.Knowledge.Search;
using DxAssistant.Knowledge.Search.Indexing;

namespace DxAssistant.Knowledge.Tests.Search;

public class KeptIndexTests
{
    private readonly KeptIndex kept = new();

    [Fact]
    public void Steps_SameWords_IsTheSameIndex()
    {
        SearchIndex before = For("fan", "loud");
        Assert.Same(before, For("fan", "loud"));
    }

    [Theory]
    [InlineData("fan", "quiet")]
    [InlineData("fanl", "oud")]
    public void Steps_OtherWords_IsAnother(string title, string phrase)
    {
        SearchIndex before = For("fan", "loud");
        Assert.NotSame(before, For(title, phrase));
        GC.KeepAlive(before);
    }

    private SearchIndex For(string title, string phrase)
    {
        ImmutableArray<SearchEntry> entries = [new SearchEntry(NodeKind.Fault, "one", title, [phrase], "")];
        return kept.Steps(entries, []).Last()!;
    }
}
