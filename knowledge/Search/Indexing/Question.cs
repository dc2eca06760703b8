using DxAssistant.Knowledge.Search.Learning;
using DxAssistant.Knowledge.Search.Terms;

namespace DxAssistant.Knowledge.Search.Indexing;

/// <summary>What the index knows of what was said, worked out once for all that is asked about it.</summary>
/// <param name="Total">How much is said in all, as <see cref="Closeness"/> counts.</param>
/// <param name="Shared">For each wording how much of it was said.</param>
/// <param name="Features">The features of what was said that some wording has.</param>
/// <param name="Plain">By page how well the plain words fit it, as a share of a perfect fit; the best pages only.</param>
internal sealed record Question(
    TermBag Said, double Total, double[] Shared, (int Number, float Weight)[] Features, IReadOnlyDictionary<int, double> Plain);
