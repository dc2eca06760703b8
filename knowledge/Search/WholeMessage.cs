using System.Collections.Immutable;
using DxAssistant.Knowledge.Search.Clauses;
using DxAssistant.Knowledge.Search.Indexing;

namespace DxAssistant.Knowledge.Search;

/// <summary>What the words of a whole message say of the faults, before its clauses are told apart.</summary>
/// <param name="Found">How well the page of a fault fits all the plain words, as a share of a perfect fit.</param>
/// <param name="Same">Faults whose pages hold the very message.</param>
/// <param name="RuledOut">Faults that the message rules out.</param>
/// <param name="After">
/// How probable the words after its turn ("but") make each fault; null when it does not turn.
/// </param>
internal sealed record WholeMessage(
    IReadOnlyDictionary<string, double> Found, IReadOnlySet<string> Same, IReadOnlySet<string> RuledOut,
    IReadOnlyDictionary<string, double>? After = null)
{
    /// <summary>Faults that some words seem to rule out, and all the others tell of: these only lose odds.</summary>
    public IReadOnlySet<string> Doubted { get; init; } = ImmutableHashSet<string>.Empty;

    private readonly double best = Found.Values.DefaultIfEmpty(1).Max();

    /// <summary>
    /// Whether the plain words of the whole message find the page of a fault first, or it holds the very message.
    /// </summary>
    public bool FindsFirst(string fault) => Same.Contains(fault) || Found.GetValueOrDefault(fault) >= best;

    /// <summary>The log odds that a fault wins or loses.</summary>
    public double OddsOf(string fault) =>
        (Weights.Whole * Found.GetValueOrDefault(fault) / best) + (Same.Contains(fault) ? Weights.SameWords : 0)
            - (RuledOut.Contains(fault) || Doubted.Contains(fault) ? Weights.RuledOut : 0)
            + (After is null ? 0 : Weights.After * Math.Log(Math.Max(After.GetValueOrDefault(fault), Weights.Floor)));
}
