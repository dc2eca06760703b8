using System.Runtime.InteropServices;

namespace DxAssistant.Benchmarks.Live;

/// <summary>In what conditions a run was made.</summary>
internal static class Machine
{
    public static string Conditions() => FormattableString.Invariant(
        $"Machine: {Environment.ProcessorCount} processors, {RuntimeInformation.FrameworkDescription}, {Load()} at the beginning.");

    /// <summary>
    /// How many processes wanted a processor over the last minute; other work on the machine makes every figure longer.
    /// </summary>
    public static string Load() =>
        File.Exists("/proc/loadavg")
            ? $"{File.ReadAllText("/proc/loadavg").Split(' ')[0]} processes wanting one"
            : "load not known";
}
