namespace DxAssistant.Server.Commands;

/// <summary>What a command reads from and writes to.</summary>
internal sealed record Streams(TextReader In, TextWriter Out, TextWriter Error)
{
    /// <summary>Says in one line what was wrong with the call and what to do.</summary>
    /// <returns>The exit code of a wrong call.</returns>
    public int Refuse(string line)
    {
        Error.WriteLine(line);
        return ExitCode.WrongCall;
    }
}
