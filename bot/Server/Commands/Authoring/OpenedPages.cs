using DxAssistant.Knowledge.Content;
using DxAssistant.Server.Content;

namespace DxAssistant.Server.Commands.Authoring;

/// <summary>Compiles the pages for a command that reads them once, or says why it cannot.</summary>
internal static class OpenedPages
{
    /// <param name="folder">The folder named on the command line; null for the usual one.</param>
    /// <param name="library">Null when the command has to end with the code that is returned.</param>
    public static int Open(string? folder, Streams streams, out Library? library)
    {
        library = null;
        string root = (folder ?? ContentCheck.UsualFolder).Replace('\\', '/').TrimEnd('/');
        if (!Directory.Exists(root))
            return streams.Refuse($"there is no folder {root}; name the folder of the pages");
        CompileResult result = ContentCompiler.Compile(ContentFolderReader.Read(root));
        library = result.Library;
        if (library is not null) return ExitCode.Done;
        streams.Error.WriteLine($"the pages in {root} have errors: content check {root} lists them");
        return ExitCode.Problems;
    }
}
