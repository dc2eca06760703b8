using System.Collections.Immutable;
using DxAssistant.Graph;
using DxAssistant.Graph.Model;
using DxAssistant.Graph.Planning;
using DxAssistant.Knowledge.Content;
using DxAssistant.Knowledge.Content.Model;
using DxAssistant.Knowledge.Tests.Content;

namespace DxAssistant.Benchmarks.Planning;

/// <summary>
/// Every symptom of every series of the shipped pages, as a case begins for the person who may do most.
/// </summary>
internal static class ShippedCases
{
    public static ImmutableArray<ShippedCase> All()
    {
        var library = ContentCompiler.Compile(RepositoryFolder.Read("content")).Library
            ?? throw new InvalidOperationException("the shipped content does not compile");
        return [.. from series in library.Series.Values from symptom in library.Graph.Symptoms
                   where IsShown(library, series, symptom) select Of(library, series, symptom)];
    }

    private static ShippedCase Of(Library library, SeriesPage series, Symptom symptom) => new(
        $"{series.Id}, {symptom.Id}", library.Graph, symptom.Id,
        new Situation(library.Roles.MaxBy(page => page.Role.Rank)!.Role, library.Graph.Access.Start)
        {
            BarredChecks = [.. library.Checks.Values
                .Where(check => IsElsewhere(check.Series, series) || check.OwnersOnly).Select(check => check.Id)],
            HandOverMinutes = library.HandOverMinutes,
        },
        Applicable(library, series));

    private static bool IsShown(Library library, SeriesPage series, Symptom symptom) =>
        symptom.Causes.Keys.Any(fault => fault != FaultId.NoneOfThese && Applicable(library, series).Contains(fault));

    private static ImmutableHashSet<FaultId> Applicable(Library library, SeriesPage series) =>
        [.. library.Faults.Values.Where(fault => !IsElsewhere(fault.Series, series)).Select(fault => fault.Id)];

    private static bool IsElsewhere(ImmutableSortedSet<string> only, SeriesPage series) =>
        !only.IsEmpty && !only.Contains(series.Id);
}
