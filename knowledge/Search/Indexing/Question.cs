using DxAssistant.Knowledge.Search.Terms;

namespace DxAssistant.Knowledge.Search.Indexing;

/// <summary>What the index knows of what was said, worked out once for all that is asked about it.</summary>
/// <param name="Features">The features of what was said that some wording has.</param>
/// <param name="Fits">By page how well its wordings and its plain words fit.</param>
internal sealed record Question(TermBag Said, (int Number, float Weight)[] Features, Scratch<PageFit> Fits)
    : IDisposable
{
    /// <summary>
    /// Frees the memory of the fits for the next question; after that nothing may be asked about this one.
    /// </summary>
    public void Dispose() => Fits.Dispose();
}
