using System.Text;

namespace DxAssistant.Server.Commands.Authoring;

/// <summary>Writes files that were not there before.</summary>
internal static class NewFiles
{
    /// <returns>False when it could not be written; the reason is on standard error.</returns>
    public static bool TryWrite(string path, string text, Streams streams)
    {
        try
        {
            if (Path.GetDirectoryName(path) is { Length: > 0 } folder) Directory.CreateDirectory(folder);
            using var file = new FileStream(path, FileMode.CreateNew, FileAccess.Write);
            file.Write(new UTF8Encoding(encoderShouldEmitUTF8Identifier: false).GetBytes(text));
            return true;
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException)
        {
            streams.Error.WriteLine($"{path} cannot be written: {error.Message.Split('\n')[0]}");
            return false;
        }
    }
}
