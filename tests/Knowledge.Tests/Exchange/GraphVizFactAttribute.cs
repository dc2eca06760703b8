namespace DxAssistant.Knowledge.Tests.Exchange;

/// <summary>
/// A test that needs the program <c>dot</c> of GraphViz: skipped, and counted as skipped, where there is none.
/// </summary>
[AttributeUsage(AttributeTargets.Method)]
public sealed class GraphVizFactAttribute : FactAttribute
{
    public GraphVizFactAttribute()
    {
        if (Program is null) Skip = "no dot on this machine: install the package graphviz";
    }

    /// <summary>Where the program is; null where it is not.</summary>
    public static string? Program { get; } =
        (Environment.GetEnvironmentVariable("PATH") ?? "").Split(Path.PathSeparator)
        .Select(folder => Path.Combine(folder, "dot")).FirstOrDefault(File.Exists);
}
