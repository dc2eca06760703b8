using DxAssistant.Server.Serving;

namespace DxAssistant.Bot.Tests.Server;

/// <summary>The pages of the repository, compiled once for all tests.</summary>
internal static class Shipped
{
    public static string Folder { get; } = ContentPlace.Find()
        ?? throw new DirectoryNotFoundException("there is no content folder above the tests");

    private static readonly Lazy<LiveContent> Compiled = new(() =>
    {
        using var notes = new StringWriter();
        return LiveContent.Open(Folder, notes) ?? throw new InvalidOperationException(notes.ToString());
    });

    public static InUse InUse => Compiled.Value.Current;
}
