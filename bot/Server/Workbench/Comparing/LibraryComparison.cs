using System.Collections.Immutable;
using DxAssistant.Graph.Model;
using DxAssistant.Graph.Testability;
using DxAssistant.Knowledge.Content;

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
        SymptomWalk? old = SymptomWalk.Of(before, series, symptom, work), fresh =
            SymptomWalk.Of(after, series, symptom, work);
        if (old?.Text == fresh?.Text) return null;
        Progress?.Invoke($"{series} {symptom}");
        return Figures(series, symptom, old, fresh) with { Walks = Walks(old, fresh) };
    }

    // Exact where both sides are, else both played on the same units.
    private ChangedSymptom Figures(string series, SymptomId symptom, SymptomWalk? old, SymptomWalk? fresh)
    {
        var changed = new ChangedSymptom(series, symptom.Value, old?.Assess(), fresh?.Assess(), []);
        if (old is null || fresh is null) return Alone(Alone(changed, old, isOld: true), fresh, isOld: false);
        if (changed is { Before.Walks: not null, After.Walks: not null }) return changed;
        PairedWalks played = PairedWalks.Play((old.Problem, old.Policy), (fresh.Problem, fresh.Policy), walks, seed);
        return changed with
        {
            Before = changed.Before! with { Walks = played.Before },
            After = changed.After! with { Walks = played.After },
            Played = played,
        };
    }

    // What is on one side only is played by itself.
    private ChangedSymptom Alone(ChangedSymptom changed, SymptomWalk? walk, bool isOld)
    {
        if (walk is null || (isOld ? changed.Before : changed.After) is not { Walks: null } figures) return changed;
        WalkFigures played =
            PairedWalks.Play((walk.Problem, walk.Policy), (walk.Problem, walk.Policy), walks, seed).Before;
        return isOld
            ? changed with { Before = figures with { Walks = played } }
            : changed with { After = figures with { Walks = played } };
    }

    private static ImmutableArray<ChangedWalk> Walks(SymptomWalk? old, SymptomWalk? fresh)
    {
        IEnumerable<FaultId> Faults(SymptomWalk? walk) => walk?.Problem.Faults.Select(fault => fault.Id) ?? [];
        return
        [
            .. Faults(old).Union(Faults(fresh)).Order()
                .Select(fault => new ChangedWalk(fault.Value, old?.To(fault) ?? [], fresh?.To(fault) ?? []))
                .Where(walk => !walk.Before.SequenceEqual(walk.After)),
        ];
    }
}
