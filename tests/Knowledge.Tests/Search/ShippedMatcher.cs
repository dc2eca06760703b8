using DxAssistant.Knowledge.Content;
using DxAssistant.Knowledge.Search;
using DxAssistant.Knowledge.Tests.Content;

namespace DxAssistant.Knowledge.Tests.Search;

/// <summary>The matcher over the shipped content, built once for all tests.</summary>
internal static class ShippedMatcher
{
    private static readonly Lazy<Library> Pages = new(() =>
        ContentCompiler.Compile(RepositoryFolder.Read("content")).Library
        ?? throw new InvalidOperationException("the shipped content does not compile"));

    private static readonly Lazy<Matcher> Built = new(() => Knowledge.Search.Matcher.For(Pages.Value));

    public static Library Library => Pages.Value;

    public static Matcher Matcher => Built.Value;

    public static MatchResult Match(string text, string? seriesId = null) => Matcher.Match(text, seriesId);
}
