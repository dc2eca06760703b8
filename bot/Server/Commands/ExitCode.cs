namespace DxAssistant.Server.Commands;

/// <summary>How a command ends.</summary>
internal static class ExitCode
{
    public const int Done = 0;

    /// <summary>The work found problems.</summary>
    public const int Problems = 1;

    public const int WrongCall = 2;
}
