using System.Diagnostics;
using DxAssistant.Bot.Tests.Load;

namespace DxAssistant.Bot.Tests.Faults;

/// <summary>
/// A disk of four megabytes that only one program sees, and that goes with it: tmpfs in a mount namespace of its own.
/// </summary>
internal static class SmallDisk
{
    // Whoever is not the administrator becomes one of a namespace, where that is let.
    private static readonly string[] Apart =
        ["unshare", Environment.IsPrivilegedProcess ? "-m" : "-rm", "--", "sh", "-c"];

    private static readonly Lazy<bool> there = new(() =>
    {
        using var folder = Process.Start(new ProcessStartInfo(Apart[0], [.. Apart[1..], "mount -t tmpfs none /tmp"])
        {
            RedirectStandardError = true,
        })!;
        folder.WaitForExit();
        return folder.ExitCode == 0;
    });

    /// <summary>Whether this machine lets a program have one.</summary>
    public static bool IsThere => OperatingSystem.IsLinux() && File.Exists("/usr/bin/unshare") && there.Value;

    /// <summary>Starts the server with the disk in place of a folder.</summary>
    /// <param name="prepare">A line of the shell, run in the folder first.</param>
    public static Task<ServerProcess> StartAsync(string folder, string prepare, params string[] arguments) =>
        ServerProcess.StartByAsync(
            [.. Apart, $"mount -t tmpfs -o size=4m none \"$0\" && cd \"$0\" && {prepare} && exec \"$@\"", folder],
            arguments);

    /// <summary>Where a file on the disk is found from outside.</summary>
    public static string Seen(ServerProcess server, string path) =>
        FormattableString.Invariant($"/proc/{server.Id}/root{path}");
}
