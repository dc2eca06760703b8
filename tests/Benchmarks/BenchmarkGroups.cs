using System.Collections.Immutable;
using DxAssistant.Benchmarks.Groups;

namespace DxAssistant.Benchmarks;

/// <summary>All groups, in the order in which they run.</summary>
internal static class BenchmarkGroups
{
    public static ImmutableArray<IBenchmarkGroup> All { get; } =
        [
            new CalculationGroup(), new JudgeGroup(), new ReadingGroup(), new PlannerGroup(), new CompileGroup(),
            new IncrementalGroup(), new DeskGroup(),
            new MatchingGroup(), new GatesGroup(), new BoundsGroup(), new SettingsGroup(),
            new RepliesGroup(), new StagesGroup(), new ThroughputGroup(), new StoredGroup(), new KillsGroup(),
            new GrowthGroup(), new FuzzGroup(), new SoakGroup(),
        ];
}
