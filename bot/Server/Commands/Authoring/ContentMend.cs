using System.CommandLine;
using DxAssistant.Knowledge.Content;
using DxAssistant.Server.Content;

namespace DxAssistant.Server.Commands.Authoring;

/// <summary><c>content mend [folder]</c>: puts right what has one obvious mend.</summary>
internal static class ContentMend
{
    public static Command Make(Streams streams)
    {
        Argument<string?> folder = ContentCommand.Folder();
        var show = new Option<bool>("--show") { Description = "Show the changes and write nothing." };
        var mend =
            new Command("mend", "Put right what can only be meant one way; the rest is left to you.") { folder, show };
        mend.SetAction(call => Run(call.GetValue(folder), call.GetValue(show), streams));
        return mend;
    }

    private static int Run(string? folder, bool show, Streams streams)
    {
        string root = (folder ?? ContentCheck.UsualFolder).Replace('\\', '/').TrimEnd('/');
        if (!Directory.Exists(root)) return streams.Refuse($"there is no folder {root}; name the folder of the pages");
        ContentFolder before = ContentFolderReader.Read(root);
        ContentFolder after = ContentMender.Mend(before);
        streams.Out.Write(LineChanges.Write(before, after, root + "/"));
        ContentFile[] changed = [.. after.Files.Where(file => before.File(file.Path)!.Text != file.Text)];
        try
        {
            if (!show) foreach (ContentFile file in changed) PageFile.Rewrite(Path.Combine(root, file.Path), file.Text);
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException)
        {
            return streams.Refuse($"a page cannot be written: {error.Message}");
        }

        int left = ContentCompiler.Compile(after).Diagnostics.Count(found => found.Severity == Severity.Error);
        streams.Error.WriteLine(
            $"{Counted.Of(changed.Length, "page")} {(show ? "to change" : "changed")}, {Counted.Of(left, "error")} left");
        return left == 0 ? ExitCode.Done : ExitCode.Problems;
    }
}
