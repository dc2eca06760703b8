using System.Collections.Immutable;

namespace DxAssistant.Knowledge.Calculations;

/// <summary>What became of a wish to calculate.</summary>
public abstract record CalculationResult
{
    private CalculationResult() { }

    /// <summary>It was calculated.</summary>
    /// <param name="Values">In the order in which the calculation names its outputs, in their units.</param>
    public sealed record Answer(ImmutableArray<DerivationTerm> Values, Derivation Derivation) : CalculationResult;

    /// <summary>An input is missing, of the wrong kind, or physically or mathematically impossible.</summary>
    /// <param name="Message">Lower case, no full stop, names the input and what it may be.</param>
    public sealed record InvalidInput(string Message) : CalculationResult;

    /// <summary>The inputs are possible, but outside of what the formula or table covers.</summary>
    /// <param name="Message">Lower case, no full stop, names the input and the range.</param>
    public sealed record OutOfRange(string Message) : CalculationResult;
}
