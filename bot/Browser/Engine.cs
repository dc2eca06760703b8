using System.Runtime.InteropServices.JavaScript;
using System.Runtime.Versioning;
using System.Text.Json;
using DxAssistant.Conversation;
using DxAssistant.Conversation.Messages;
using DxAssistant.Conversation.Sheets;
using DxAssistant.Conversation.State;
using DxAssistant.Knowledge.Content;

namespace DxAssistant.Browser;

/// <summary>What the page calls: the same core as the server's, on a pack of pages.</summary>
[SupportedOSPlatform("browser")]
public static partial class Engine
{
    private static Assistant? assistant;
    private static TitleBook titles = TitleBook.Empty;
    private static AwayCase? open;

    /// <summary>Takes a pack of pages into use, instead of any before it.</summary>
    /// <returns>The version of its content.</returns>
    [JSExport]
    internal static string Load(byte[] pack)
    {
        Library library = ContentCompiler.Rebuild(ContentPack.Read(pack));
        (assistant, titles, open) = (new Assistant(library, late: true), TitleBook.Of(library), null);
        return library.Version;
    }

    /// <summary>
    /// Makes a small part of the understanding of free words, so that the first of them are answered at once and
    /// nothing else waits long for it.
    /// </summary>
    /// <returns>Whether there is more to make.</returns>
    [JSExport]
    internal static bool Warm()
    {
        if (Loaded().GetReadier()) return true;
        Loaded().Take(CaseState.New, new Message("warm", new MessageBody.Words("the unit does not cool")));
        return false;
    }

    /// <summary>Takes a case up where its log ends.</summary>
    /// <param name="log">All its events, as JSON; an empty list for a new case.</param>
    [JSExport]
    internal static void Begin(string log) =>
        open = new AwayCase(Loaded(), titles,
            JsonSerializer.Deserialize(log, ConversationJson.Default.ImmutableArrayCaseEvent));

    /// <summary>Takes one turn of that case, in the form in which the page would send it to the server.</summary>
    /// <returns>The turn with its events, as JSON.</returns>
    [JSExport]
    internal static string Take(string turn)
    {
        using JsonDocument json = JsonDocument.Parse(turn);
        AwayTurn taken = Begun().Take(AwayMessage.Read(json.RootElement));
        return JsonSerializer.Serialize(taken, ConversationJson.Default.AwayTurn);
    }

    private static Assistant Loaded() => assistant ?? throw new InvalidOperationException("no pages are loaded");

    private static AwayCase Begun() => open ?? throw new InvalidOperationException("no case is begun");
}
