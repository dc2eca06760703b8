using System.Collections.Immutable;
using DxAssistant.Graph.Model;
using DxAssistant.Knowledge.Content;
using DxAssistant.Knowledge.Content.Model;

namespace DxAssistant.Knowledge.Pictures.Plans;

/// <summary>What the pages hold about each fault, each symptom and each series.</summary>
internal sealed class CoverageTable
{
    private readonly Library library;
    private readonly ImmutableArray<Check> all, measured;

    /// <param name="only">The series; null for all.</param>
    public CoverageTable(Library library, SeriesPage? only)
    {
        this.library = library;
        Series = only is null ? [.. library.Series.Values] : [only];
        Faults = [.. library.Faults.Values.Where(page => page.Id != FaultId.NoneOfThese
            && Series.Any(series => IsFor(page.Series, series)))
            .OrderBy(page => page.Title.Text, StringComparer.Ordinal).ThenBy(page => page.Id)];
        Symptoms = [.. library.Symptoms.Values.Where(page => Faults.Any(fault => Explains(fault, page)))
            .OrderBy(page => page.Title.Text, StringComparer.Ordinal).ThenBy(page => page.Id)];
        all = [.. library.Graph.Checks.Where(check => library.Checks[check.Id] is { OwnersOnly: false } page
            && Series.Any(series => IsFor(page.Series, series)))];
        measured = [.. all.Where(check => IsMeasured(check.Id))];
    }

    public ImmutableArray<SeriesPage> Series { get; }

    public ImmutableArray<FaultPage> Faults { get; }

    public ImmutableArray<SymptomPage> Symptoms { get; }

    public static bool IsFor(ImmutableSortedSet<string> only, SeriesPage series) =>
        only.IsEmpty || only.Contains(series.Id);

    /// <summary>True when the symptom's page names the fault among its causes.</summary>
    public bool Explains(FaultPage fault, SymptomPage symptom) => Causes(symptom).ContainsKey(fault.Id);

    /// <summary>How many faults of a series explain a symptom.</summary>
    public int Explaining(SymptomPage symptom, SeriesPage series) =>
        Faults.Count(fault => Explains(fault, symptom) && IsFor(fault.Series, series));

    /// <summary>How many checks the proof of a fault names, and how many of them have readings.</summary>
    public (int Checks, int Readings) Proof(FaultPage fault) =>
        (fault.Demanded.Length, fault.Demanded.Count(IsMeasured));

    /// <summary>How well a fault is told from the others that explain the symptom.</summary>
    public Coverage Of(FaultPage fault, SymptomPage symptom)
    {
        FaultId[] among = [.. Faults.Where(other => Explains(other, symptom)).Select(other => other.Id)];
        if (Telltale.Strength(measured, among, fault.Id) >= Telltale.Decisive) return Coverage.Measured;
        return Telltale.Strength(all, among, fault.Id) switch
        {
            >= Telltale.Decisive => Coverage.Decided,
            > Telltale.Something => Coverage.Leans,
            _ => Coverage.Thin,
        };
    }

    private bool IsMeasured(CheckId id) => library.Checks[id].Calculation is not null;

    private ImmutableSortedDictionary<FaultId, double> Causes(SymptomPage symptom) =>
        library.Graph.Find(symptom.Id)!.Causes;
}
