using DxAssistant.Server.Serving;

namespace DxAssistant.Browser.Tests;

/// <summary>The pages that are shipped, compiled once for all tests.</summary>
internal static class Shipped
{
    private static readonly Lazy<LiveContent> Content = new(Open);

    public static InUse Pages => Content.Value.Current;

    private static LiveContent Open()
    {
        using var notes = new StringWriter();
        return LiveContent.Open(ContentPlace.Find()!, notes) ?? throw new InvalidOperationException(notes.ToString());
    }
}
