using DxAssistant.Knowledge.Search;

namespace DxAssistant.Knowledge.Tests.Search;

/// <summary>Causes written down in the test.</summary>
internal sealed class FakeCauses(params (string Symptom, string Fault, double Probability, double Weight)[] links)
    : ISymptomCauses
{
    public IEnumerable<SymptomCause> CausesOf(string symptomId) =>
        links.Where(link => link.Symptom == symptomId)
            .Select(link => new SymptomCause(link.Fault, link.Probability, link.Weight));

    public double WeightOf(string faultId) => 1;

    public IEnumerable<string> SymptomsShownAs(string seriesId, string code) => [];
}
