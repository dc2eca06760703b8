using DxAssistant.Knowledge.Quantities;

namespace DxAssistant.Knowledge.Calculations;

/// <summary>One output of a named calculation.</summary>
/// <param name="Unit">In which it is given; null for words, yes or no, and lists of words.</param>
/// <param name="Follows">An input whose unit it takes over (°F in, °F and F_diff out); null when the unit is
/// fixed.</param>
public sealed record CalculationOutput(string Name, Unit? Unit, string? Follows = null)
{
    /// <summary>The unit to give, when the input followed came in <paramref name="given"/>.</summary>
    internal Unit? UnitFor(Unit? given) => given switch
    {
        null => Unit,
        _ when Unit is null || given.Kind == Unit.Kind => given,
        { Kind: QuantityKind.Temperature } when Unit.Kind == QuantityKind.TemperatureDifference =>
            given.ToSi(1) - given.ToSi(0) < 1 ? Units.FahrenheitDifference : Units.Kelvin,
        _ => Unit,
    };
}
