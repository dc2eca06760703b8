using System.Collections.Immutable;
using DxAssistant.Knowledge.Quantities;

namespace DxAssistant.Knowledge.Calculations;

/// <summary>How a number was reached, as data: a tree whose leaves are readings, limits and citations.</summary>
/// <param name="Formula">In plain text: <c>R2 = R1 (k + T2) / (k + T1)</c>.</param>
/// <param name="PutIn">What was put in, in the order in which the formula names it.</param>
/// <param name="Results">What came out.</param>
/// <param name="Children">How the parts that were not given were reached.</param>
/// <param name="Source">Where the formula comes from.</param>
public sealed record Derivation(
    string Formula,
    ImmutableArray<DerivationTerm> PutIn,
    ImmutableArray<DerivationTerm> Results,
    ImmutableArray<Derivation> Children,
    Citation Source)
{
    /// <summary>Starts a derivation.</summary>
    public static Derivation Of(string formula, Citation source) => new(formula, [], [], [], source);

    public Derivation With(string symbol, double si, Unit unit) =>
        this with { PutIn = PutIn.Add(new DerivationTerm(symbol, CalculationValue.OfSi(si, unit))) };

    public Derivation With(string symbol, string word) =>
        this with { PutIn = PutIn.Add(new DerivationTerm(symbol, new CalculationValue.Text(word))) };

    public Derivation Gives(string symbol, double si, Unit unit) =>
        this with { Results = Results.Add(new DerivationTerm(symbol, CalculationValue.OfSi(si, unit))) };

    public Derivation From(params Derivation[] children) => this with { Children = Children.AddRange(children) };
}
