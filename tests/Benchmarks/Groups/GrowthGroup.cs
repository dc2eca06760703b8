using System.Collections.Immutable;
using System.Globalization;
using DxAssistant.Benchmarks.Growing;
using DxAssistant.Benchmarks.Live;

namespace DxAssistant.Benchmarks.Groups;

/// <summary>Compiling, editing, keeping and talking on made-up libraries of growing size.</summary>
/// <remarks><c>DX_FAULTS</c> names the largest size: 10,000 without it.</remarks>
internal sealed class GrowthGroup : IBenchmarkGroup
{
    private static readonly ImmutableArray<int> Sizes = [1_000, 10_000, 100_000];

    public string Name => "growth";

    public void Run(ResultFolder results)
    {
        int largest = int.TryParse(Environment.GetEnvironmentVariable("DX_FAULTS"), NumberStyles.None,
            CultureInfo.InvariantCulture, out int given) ? given : 10_000;
        string begun = Machine.Conditions();

        // Not counted: the program has not compiled itself yet.
        for (int round = 0; round < 3; round++) LibraryRun.Of(Sizes[0]);
        ImmutableArray<LibraryPoint> points = [.. Sizes.Where(size => size <= largest).Select(LibraryRun.Of)];
        results.Keep("growth.svg", LibraryChart.Svg(points));
        results.Keep("growth.md", LibraryTable.Text(points, begun));
    }
}
