namespace DxAssistant.Knowledge.Search;

/// <summary>What the matcher needs of the fault graph.</summary>
public interface ISymptomCauses
{
    /// <summary>The faults that explain a symptom; none for an id that does not exist.</summary>
    IEnumerable<SymptomCause> CausesOf(string symptomId);

    /// <summary>How frequent a fault is against others; 1 for an id that does not exist.</summary>
    double WeightOf(string faultId);

    /// <summary>
    /// The symptoms that a series shows as a code, whatever the code's look; none if it has no such code.
    /// </summary>
    IEnumerable<string> SymptomsShownAs(string seriesId, string code);
}
