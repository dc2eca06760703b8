using System.Diagnostics;
using System.Formats.Tar;
using DxAssistant.Knowledge.Content;
using DxAssistant.Server.Content;

namespace DxAssistant.Server.Workbench.Comparing;

/// <summary>Reads pages from a folder, or from a revision when Git is there.</summary>
internal static class PagesAt
{
    /// <param name="name">A folder, or anything that names a commit.</param>
    /// <param name="inside">Where the pages lie inside a commit, for example <c>content</c>.</param>
    /// <param name="problem">Why there are no pages; null when there are.</param>
    public static ContentFolder? Read(string name, string inside, out string? problem)
    {
        problem = null;
        if (Directory.Exists(name)) return ContentFolderReader.Read(name);
        try
        {
            return FromCommit(name, inside, out problem);
        }
        catch (Exception error) when (error is System.ComponentModel.Win32Exception or IOException)
        {
            problem = $"{name} is no folder, and git did not answer: {error.Message}";
            return null;
        }
    }

    private static ContentFolder? FromCommit(string name, string inside, out string? problem)
    {
        // A name that begins with a hyphen would be taken for an option.
        problem = $"{name} is neither a folder nor a commit with a folder {inside}";
        if (name.StartsWith('-')) return null;
        using Process git = Process.Start(new ProcessStartInfo("git", ["archive", "--format=tar", $"{name}:{inside}"])
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            WorkingDirectory = Root(),
        })!;
        git.ErrorDataReceived += (_, _) => { };
        git.BeginErrorReadLine();
        using var bytes = new MemoryStream();
        git.StandardOutput.BaseStream.CopyTo(bytes);
        git.WaitForExit();
        if (git.ExitCode != 0) return null;
        bytes.Position = 0;
        problem = null;
        return ContentFolder.Of(Files(bytes));
    }

    // From a folder inside the repository a path in a commit would count from there for some commands only.
    private static string Root()
    {
        for (var at = new DirectoryInfo(Environment.CurrentDirectory); at is not null; at = at.Parent)
            if (Path.Exists(Path.Combine(at.FullName, ".git"))) return at.FullName;
        return Environment.CurrentDirectory;
    }

    private static List<ContentFile> Files(Stream tar)
    {
        var files = new List<ContentFile>();
        using var reader = new TarReader(tar);
        while (reader.GetNextEntry() is { } entry)
        {
            if (entry.DataStream is not { } data || Path.GetExtension(entry.Name) is not (".md" or ".svg")) continue;
            using var bytes = new MemoryStream();
            data.CopyTo(bytes);
            files.Add(new ContentFile(entry.Name, ContentFolderReader.Text(bytes.ToArray())));
        }

        return files;
    }
}
