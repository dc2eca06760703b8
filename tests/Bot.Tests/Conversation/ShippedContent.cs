using DxAssistant.Conversation;
using DxAssistant.Knowledge.Content;
using DxAssistant.Server.Content;

namespace DxAssistant.Bot.Tests.Conversation;

/// <summary>The content of the repository, compiled once for all tests.</summary>
internal static class ShippedContent
{
    private static readonly Lazy<Assistant> Compiled = new(() => new Assistant(Compile()));

    public static Assistant Assistant => Compiled.Value;

    public static Library Library => Assistant.Library;

    private static Library Compile()
    {
        CompileResult result = ContentCompiler.Compile(ContentFolderReader.Read(Repository.PathOf("content")));
        return result.Library ?? throw new InvalidOperationException(
            $"the shipped content does not compile: {result.Diagnostics.FirstOrDefault()}");
    }
}
