using DxAssistant.Knowledge.Search;

namespace DxAssistant.Benchmarks.Matching;

/// <summary>Pages without a fault graph: nothing is behind any symptom.</summary>
internal sealed class NoCauses : ISymptomCauses
{
    public IEnumerable<SymptomCause> CausesOf(string symptomId) => [];

    public double WeightOf(string faultId) => 1;

    public IEnumerable<string> SymptomsShownAs(string seriesId, string code) => [];
}
