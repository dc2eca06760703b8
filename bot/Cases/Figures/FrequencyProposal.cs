namespace DxAssistant.Cases.Figures;

/// <summary>What closed cases say of the frequency word of one fault.</summary>
/// <param name="Word">The word on its page, or the word nearest to the number there.</param>
/// <param name="Seen">Closed cases in which it was the fault.</param>
/// <param name="Expected">As many as its word foretells among all that were seen.</param>
/// <param name="Share">Its share of all faults by word and cases together, 0 to 1.</param>
/// <param name="Proposed">The word nearest to that share.</param>
public sealed record FrequencyProposal(string Fault, string Word, int Seen, double Expected, double Share,
    string Proposed)
{
    public bool IsChange => Word != Proposed;
}
