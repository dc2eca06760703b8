using DxAssistant.Knowledge.Content;
using DxAssistant.Knowledge.Tests.Content;

namespace DxAssistant.Knowledge.Tests.Exchange;

/// <summary>The shipped pages, compiled once.</summary>
internal static class ShippedPages
{
    public static Library Library { get; } = ContentCompiler.Compile(RepositoryFolder.Read("content")).Library!;
}
