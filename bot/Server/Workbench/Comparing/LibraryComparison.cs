using System.Collections.Immutable;
using DxAssistant.Graph.Model;
using DxAssistant.Graph.Planning;
using DxAssistant.Graph.Testability;
using DxAssistant.Knowledge.Content;
using DxAssistant.Knowledge.Content.Model;

namespace DxAssistant.Server.Workbench.Comparing;

/// <summary>Finds the symptoms whose walks an edit can have changed, and plays only those.</summary>
/// <param name="work">The planner's work for a step.</param>
internal sealed class LibraryComparison(Library before, Library after, int walks, ulong seed, int work)
{
    /// <summary>Told each symptom before it is played.</summary>
    public Action<string>? Progress { get; init; }

    /// <summary>By series, then symptom.</summary>
    public ImmutableArray<ChangedSymptom> Changed() =>
    [
        .. before.Series.Keys.Union(after.Series.Keys).Order(StringComparer.Ordinal).SelectMany(series =>
            before.Symptoms.Keys.Union(after.Symptoms.Keys).Order()
                .Select(symptom => Compare(series, symptom)).OfType<ChangedSymptom>()),
    ];

    private ChangedSymptom? Compare(string series, SymptomId symptom)
    {
        SeriesGraph? old = In(before, series), fresh = In(after, series);
        SequencingProblem? first = old?.ProblemOf(symptom), second = fresh?.ProblemOf(symptom);
        if ((first is null ? "" : ProblemText.Of(first)) == (second is null ? "" : ProblemText.Of(second))) return null;
        Progress?.Invoke($"{series} {symptom}");
        SymptomFigures? Figures(SeriesGraph? graph, SequencingProblem? problem) =>
            problem is null ? null : graph!.Assess(symptom, walks, seed, work);
        return new ChangedSymptom(series, symptom.Value, Figures(old, first), Figures(fresh, second), Walks(first, second));
    }

    private static SeriesGraph? In(Library library, string series) =>
        library.Series.TryGetValue(series, out SeriesPage? page) ? new SeriesGraph(library, page) : null;

    private ImmutableArray<ChangedWalk> Walks(SequencingProblem? first, SequencingProblem? second)
    {
        IEnumerable<FaultId> Faults(SequencingProblem? problem) => problem?.Faults.Select(fault => fault.Id) ?? [];
        return
        [
            .. Faults(first).Union(Faults(second)).Order()
                .Select(fault => new ChangedWalk(fault.Value, Walk(first, fault), Walk(second, fault)))
                .Where(walk => !walk.Before.SequenceEqual(walk.After)),
        ];
    }

    private ImmutableArray<string> Walk(SequencingProblem? problem, FaultId fault) =>
        problem is null || problem.Faults.All(known => known.Id != fault)
            ? []
            : LikeliestWalk.Of(problem, fault, new LivePlanner(work));
}
