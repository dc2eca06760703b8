using DxAssistant.Conversation.Speaking;

namespace DxAssistant.Bot.Tests.Conversation;

public sealed class PhraseTests
{
    // Phrases whose ids are put together from a verdict, a pattern, what would settle a doubt, what a set shows, or a
    // mode.
    private static readonly string[] Composed =
        ["reading-", "settle-", "pattern-", "verdict-", "picture-side-", "picture-bars", "mode-", "words-mode-"];

    [Fact]
    public void PhraseFile_Shipped_HasExactlyThePhrasesInUse() =>
        Assert.Equal(PhraseIds.All.Order(StringComparer.Ordinal), ShippedContent.Library.Phrases.Templates.Keys);

    [Fact]
    public void PhraseIds_All_AreSpokenSomewhere()
    {
        string source = string.Concat(Directory
            .GetFiles(Repository.PathOf("bot", "Conversation"), "*.cs", SearchOption.AllDirectories)
            .Concat(Directory.GetFiles(Repository.PathOf("knowledge", "Pictures"), "*.cs", SearchOption.AllDirectories))
            .Concat(Directory.GetFiles(Repository.PathOf("bot", "Server", "Privacy"), "*.cs"))
            .Where(path => !path.EndsWith("PhraseIds.cs", StringComparison.Ordinal)
                && !path.Contains($"{Path.DirectorySeparatorChar}obj{Path.DirectorySeparatorChar}"))
            .Select(File.ReadAllText));
        Assert.All(
            PhraseIds.All.Where(id => !Composed.Any(prefix => id.StartsWith(prefix, StringComparison.Ordinal))),
            id => Assert.Contains($"\"{id}\"", source));
    }

    [Fact]
    public void PhraseIds_Composed_CoverEveryKey()
    {
        IEnumerable<string> keys =
        [
            .. Knowledge.Judging.ToSettle.All.Select(key => $"settle-{key}"),
            .. Enum.GetValues<Knowledge.Judging.VerdictKind>().Select(VerdictWord.Phrase),
        ];
        Assert.All(keys, key => Assert.Contains(key, PhraseIds.All));
    }
}
