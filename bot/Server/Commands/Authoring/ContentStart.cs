using System.CommandLine;
using DxAssistant.Knowledge.Exchange;

namespace DxAssistant.Server.Commands.Authoring;

/// <summary><c>content start FOLDER</c>: a folder of pages with nothing in it but what every folder needs.</summary>
internal static class ContentStart
{
    public static Command Make(Streams streams)
    {
        var folder = new Argument<string>("folder") { Description = "A new folder for the pages." };
        var start = new Command("start", "Make a folder with the pages that every other page needs.") { folder };
        start.SetAction(call => Run(call.GetValue(folder)!, streams));
        return start;
    }

    private static int Run(string folder, Streams streams)
    {
        if (File.Exists(folder) || Directory.Exists(folder))
            return streams.Refuse($"{folder} is there already: name a new folder");
        var (pages, _) = PageSkeleton.Empty();
        foreach (var (path, text) in pages)
            if (!NewFiles.TryWrite(Path.Combine(folder, path), text, streams)) return ExitCode.WrongCall;
        streams.Out.Write($"{Counted.Of(pages.Count, "page")} in {folder}. Go on with: content new repair {folder}\n");
        return ExitCode.Done;
    }
}
