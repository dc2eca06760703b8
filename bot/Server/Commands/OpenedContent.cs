using DxAssistant.Server.Serving;

namespace DxAssistant.Server.Commands;

/// <summary>Opens the content for a command, or says why it cannot.</summary>
internal static class OpenedContent
{
    /// <param name="folder">The folder named on the command line; null for the usual one.</param>
    /// <param name="content">Null when the command has to end with the code that is returned.</param>
    public static int Open(string? folder, Streams streams, out LiveContent? content)
    {
        content = null;
        string? place = folder ?? ContentPlace.Find();
        if (place is null)
            return streams.Refuse("no folder content with an index.md was found: name it with --content FOLDER");
        if (!Directory.Exists(place))
            return streams.Refuse($"there is no folder {place}: name the folder of the pages with --content FOLDER");
        content = LiveContent.Open(place, streams.Error);
        if (content is not null) return ExitCode.Done;
        streams.Error.WriteLine(
            $"the pages in {place} have errors, so nothing is started: mend them, then run content check");
        return ExitCode.Problems;
    }
}
