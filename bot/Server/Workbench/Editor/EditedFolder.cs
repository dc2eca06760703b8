using System.Text.Json.Nodes;
using DxAssistant.Server.Serving;

namespace DxAssistant.Server.Workbench.Editor;

/// <summary>Finds the pages that an editor means, wherever it starts the program.</summary>
internal static class EditedFolder
{
    /// <summary>
    /// The folder as the call names it: from where the program was started, or from what the editor has open. Without a
    /// name, the folder <c>content</c> there or above.
    /// </summary>
    /// <param name="named">As called; null when nothing was named.</param>
    /// <param name="said">
    /// What the editor says at the beginning (Language Server Protocol 3.17, <c>initialize</c>).
    /// </param>
    /// <returns>Null when there is none.</returns>
    public static string? Find(string? named, JsonNode? said)
    {
        string[] open = [.. Opened(said).Append(Environment.CurrentDirectory)];
        return named is null
            ? open.Select(ContentPlace.FindFrom).FirstOrDefault(found => found is not null)
            : open.Select(folder => Path.Combine(folder, named)).FirstOrDefault(Directory.Exists);
    }

    private static IEnumerable<string> Opened(JsonNode? said)
    {
        IEnumerable<JsonNode?> folders = (said?["workspaceFolders"] as JsonArray)?.Select(folder => folder?["uri"])
            ?? [];
        foreach (JsonNode? address in folders.Append(said?["rootUri"]))
            if (address is JsonValue value && value.TryGetValue(out string? text)
                && Uri.TryCreate(text, UriKind.Absolute, out Uri? uri) && uri.IsFile)
                yield return uri.LocalPath;
    }
}
