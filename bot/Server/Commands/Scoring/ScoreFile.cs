using System.Collections.Immutable;
using System.CommandLine;
using System.Text.Json;
using DxAssistant.Server.Commands.Asking;

namespace DxAssistant.Server.Commands.Scoring;

/// <summary>Marks a command's answers to files of JSON Lines that hold what is expected of each.</summary>
internal static class ScoreFile
{
    public static Option<string[]> Option() => new("--score")
    {
        Description =
            "Answer the lines of this file instead, and say how many were right; exits 1 when any was wrong. Of "
                + "several files each has a sheet of its own.",
        HelpName = "FILE",
        AllowMultipleArgumentsPerToken = true,
    };

    public static Option<bool> Figures() => new("--figures")
    {
        Description = "With --score: print the figures only, and no line of the file.",
    };

    /// <summary>Marks every line and prints the sheet, with the file's name above it where there are several.</summary>
    /// <returns>
    /// 0; 1 when an answer was confidently wrong; 2 when a file cannot be used, and none after it is.
    /// </returns>
    public static int Run(string[] paths, Func<JsonElement, Marked> mark, Streams streams, bool figuresOnly = false) =>
        Run(paths, lines => Score(lines, mark), streams, figuresOnly);

    /// <inheritdoc cref="Run(string[], Func{JsonElement, Marked}, Streams, bool)"/>
    public static int Run(string[] paths, Func<IEnumerable<string>, IScoreSheet> score, Streams streams,
        bool figuresOnly)
    {
        int worst = ExitCode.Done;
        foreach (string path in paths)
        {
            if (paths.Length > 1) streams.Out.WriteLine($"{Path.GetFileNameWithoutExtension(path)}:");
            worst = Math.Max(worst, Run(path, score, streams, figuresOnly));
            if (worst > ExitCode.Problems) break;
        }

        return worst;
    }

    /// <exception cref="RequestException">A line cannot be used; its number comes first.</exception>
    public static ScoreSheet Score(IEnumerable<string> lines, Func<JsonElement, Marked> mark) => new(Each(lines, mark));

    /// <summary>Reads every line that is not blank.</summary>
    /// <exception cref="RequestException">A line cannot be used; its number comes first.</exception>
    public static ImmutableArray<(int Line, T Read)> Each<T>(IEnumerable<string> lines, Func<JsonElement, T> read) =>
    [
        .. lines.Select((line, index) => (Line: index + 1, Text: line))
            .Where(line => !string.IsNullOrWhiteSpace(line.Text))
            .Select(line => (line.Line, One(line.Line, line.Text, read))),
    ];

    private static int Run(string path, Func<IEnumerable<string>, IScoreSheet> score, Streams streams, bool figuresOnly)
    {
        try
        {
            var sheet = score(File.ReadLines(path));
            streams.Out.Write(sheet.Text(figuresOnly));
            return sheet.HasWrong ? ExitCode.Problems : ExitCode.Done;
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException)
        {
            return streams.Refuse($"{path} cannot be read: name a file of JSON Lines");
        }
        catch (RequestException error)
        {
            return streams.Refuse($"{path}:{error.Message}");
        }
    }

    private static T One<T>(int number, string line, Func<JsonElement, T> read)
    {
        try
        {
            using var document = JsonDocument.Parse(line);
            return read(document.RootElement);
        }
        catch (Exception error) when (error is JsonException or RequestException)
        {
            throw new RequestException($"{number}: {error.Message.Split('.')[0]}");
        }
    }
}
