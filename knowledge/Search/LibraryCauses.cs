using DxAssistant.Graph.Model;
using DxAssistant.Knowledge.Content;

namespace DxAssistant.Knowledge.Search;

/// <summary>What the matcher needs of the fault graph, taken from a library.</summary>
public sealed class LibraryCauses(Library library) : ISymptomCauses
{
    public IEnumerable<SymptomCause> CausesOf(string symptomId)
    {
        if (library.Graph.Find(new SymptomId(symptomId)) is not { } symptom)
            return [];
        return symptom.Causes.Where(cause => cause.Key != FaultId.NoneOfThese)
            .Select(cause => new SymptomCause(cause.Key.Value, cause.Value, WeightOf(cause.Key.Value)));
    }

    public double WeightOf(string faultId) => library.Graph.Find(new FaultId(faultId))?.Weight ?? 1;

    public IEnumerable<string> SymptomsShownAs(string seriesId, string code) =>
        library.Series.TryGetValue(seriesId, out var series)
            ? series.Codes.Where(shown => shown.Display.Equals(code, StringComparison.OrdinalIgnoreCase))
                .Select(shown => shown.Symptom.Value).Distinct(StringComparer.Ordinal)
            : [];
}
