using System.CommandLine;
using DxAssistant.Server.Workbench.Editor;

namespace DxAssistant.Server.Commands.Authoring;

/// <summary><c>content serve-editor [folder]</c>: answers an editor over standard input and output.</summary>
internal static class ContentServeEditor
{
    public static Command Make(Streams streams)
    {
        Argument<string?> folder = ContentCommand.Folder();
        var serve = new Command("serve-editor",
            "Answer an editor that speaks the Language Server Protocol, over standard input and output.") { folder };
        serve.SetAction(
            call => Run(call.GetValue(folder), streams, Console.OpenStandardInput, Console.OpenStandardOutput));
        return serve;
    }

    internal static int Run(string? folder, Streams streams, Func<Stream> input, Func<Stream> output)
    {
        if (Path.IsPathRooted(folder) && !Directory.Exists(folder))
            return streams.Refuse($"there is no folder {folder}: content serve-editor FOLDER");
        try
        {
            new EditorServer(new MessageFrames(input(), output()), folder).Run();
            return ExitCode.Done;
        }
        catch (InvalidDataException error)
        {
            return streams.Refuse($"this is no editor: {error.Message}");
        }
    }
}
