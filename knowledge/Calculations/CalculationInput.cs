using System.Collections.Immutable;
using DxAssistant.Knowledge.Quantities;

namespace DxAssistant.Knowledge.Calculations;

/// <summary>One input of a named calculation.</summary>
/// <param name="Form">What is expected: a number, a word, or a list of either.</param>
/// <param name="Unit">The unit of the bounds; any unit of its kind is accepted. Null for words, and for numbers of any
/// kind.</param>
/// <param name="Possible">Outside of it an input is invalid.</param>
/// <param name="Covered">Outside of it an input is out of the range of the formula.</param>
/// <param name="Choices">The words accepted; empty when any is.</param>
public sealed record CalculationInput(
    string Name, CalculationInputForm Form, Unit? Unit, Bounds Possible, Bounds Covered, bool Required,
        ImmutableArray<string> Choices)
{
    /// <summary>The same input, valid in a narrower range.</summary>
    internal CalculationInput Within(double least, double most) => this with { Covered = new Bounds(least, most) };

    /// <summary>The same input, which may be left out.</summary>
    internal CalculationInput Optional() => this with { Required = false };

    internal static CalculationInput Number(string name, Unit unit, Bounds? possible = null) =>
        new(name, CalculationInputForm.Number, unit, possible ?? Bounds.None, Bounds.None, true, []);

    internal static CalculationInput Positive(string name, Unit unit) => Number(name, unit, Bounds.Positive);

    internal static CalculationInput NotNegative(string name, Unit unit) => Number(name, unit, Bounds.NotNegative);

    /// <summary>A temperature above absolute zero, so far as the formulas go.</summary>
    internal static CalculationInput Temperature(string name) =>
        Number(name, Units.Celsius, new Bounds(-273.15, double.PositiveInfinity, LeastIncluded: false))
            .Within(-200, 1_000);

    /// <summary>A gauge pressure, down to a vacuum.</summary>
    internal static CalculationInput Gauge(string name) =>
        Number(name, Units.KiloPascalGauge, new Bounds(-110, double.PositiveInfinity)).Within(-110, 100_000);

    /// <summary>The pressure of the local atmosphere.</summary>
    internal static CalculationInput Atmosphere(string name) =>
        Positive(name, Units.KiloPascalAbsolute).Within(20, 120);

    /// <summary>A number of any kind; related ones must be of one kind.</summary>
    internal static CalculationInput Any(string name, Bounds? possible = null) =>
        new(name, CalculationInputForm.Number, null, possible ?? Bounds.None, new Bounds(-1e12, 1e12), true, []);

    internal static CalculationInput Word(string name, params string[] choices) =>
        new(name, CalculationInputForm.Word, null, Bounds.None, Bounds.None, true, [.. choices]);

    internal static CalculationInput Words(string name) =>
        new(name, CalculationInputForm.Words, null, Bounds.None, Bounds.None, true, []);

    internal static CalculationInput Numbers(string name, Unit unit, Bounds possible) =>
        new(name, CalculationInputForm.Numbers, unit, possible, Bounds.None, true, []);
}
