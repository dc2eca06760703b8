using System.Collections.Frozen;
using System.Collections.Immutable;
using DxAssistant.Graph.Model;
using DxAssistant.Knowledge.Content;

namespace DxAssistant.Knowledge.Search;

/// <summary>What the matcher needs of the fault graph, taken from a library.</summary>
public sealed class LibraryCauses : ISymptomCauses
{
    private readonly Library library;
    private readonly FrozenDictionary<string, double> weights;
    private readonly FrozenDictionary<string, ImmutableArray<SymptomCause>> causes;

    public LibraryCauses(Library library)
    {
        this.library = library;
        weights = library.Graph.Faults.ToFrozenDictionary(fault => fault.Id.Value, fault => fault.Weight,
            StringComparer.Ordinal);
        causes =
            library.Graph.Symptoms.ToFrozenDictionary(symptom => symptom.Id.Value, CausesOf, StringComparer.Ordinal);
    }

    public IEnumerable<SymptomCause> CausesOf(string symptomId) => causes.GetValueOrDefault(symptomId, []);

    public double WeightOf(string faultId) => weights.GetValueOrDefault(faultId, 1);

    private ImmutableArray<SymptomCause> CausesOf(Symptom symptom) =>
    [
        .. symptom.Causes.Where(cause => cause.Key != FaultId.NoneOfThese)
            .Select(cause => new SymptomCause(cause.Key.Value, cause.Value, WeightOf(cause.Key.Value))),
    ];

    public IEnumerable<string> SymptomsShownAs(string seriesId, string code) =>
        library.Series.TryGetValue(seriesId, out var series)
            ? series.Codes.Where(shown => shown.Display.Equals(code, StringComparison.OrdinalIgnoreCase))
                .Select(shown => shown.Symptom.Value).Distinct(StringComparer.Ordinal)
            : [];
}
