using System.Globalization;

namespace DxAssistant.Benchmarks.Live;

/// <summary>
/// What held this process up that is none of its work: others on the processors, and pauses of the garbage collector.
/// </summary>
/// <param name="Waited">
/// Milliseconds for which its threads were ready and had no processor, summed over the threads; 0 where the
/// system does not tell.
/// </param>
/// <param name="Paused">Milliseconds for which the garbage collector stopped all threads.</param>
internal readonly record struct Held(double Waited, double Paused)
{
    /// <summary>Since the program began.</summary>
    public static Held Now() => new(Threads().Sum(Waits), GC.GetTotalPauseDuration().TotalMilliseconds);

    public static Held operator -(Held later, Held earlier) =>
        new(Math.Max(0, later.Waited - earlier.Waited), later.Paused - earlier.Paused);

    private static string[]
        Threads() => Directory.Exists("/proc/self/task") ? Directory.GetDirectories("/proc/self/task") : [];

    // The second figure: nanoseconds spent waiting for a processor. A thread may end while it is looked at.
    private static double Waits(string thread)
    {
        try
        {
            return double.Parse(File.ReadAllText(Path.Combine(thread, "schedstat"))
                .Split(' ')[1], CultureInfo.InvariantCulture) / 1e6;
        }
        catch (IOException)
        {
            return 0;
        }
    }
}
