using System.Collections.Immutable;
using DxAssistant.Knowledge.Calculations;
using DxAssistant.Knowledge.Calculations.Doubt;
using DxAssistant.Knowledge.Quantities;

namespace DxAssistant.Knowledge.Judging;

/// <summary>A number made from readings, with its uncertainty, ready to be held against limits.</summary>
/// <param name="Value">In the SI base of the unit's kind.</param>
/// <param name="Uncertainty">Standard, in the SI base.</param>
/// <param name="Unit">In which to show it.</param>
/// <param name="How">How it was made.</param>
internal sealed record Figure(string Name, double Value, double Uncertainty, Unit Unit, Derivation How)
{
    /// <summary>The parts of the uncertainty, for the derivation: what, and how much in the SI base.</summary>
    public ImmutableArray<(string Name, double Uncertainty)> Parts { get; init; } = [];

    /// <summary>Makes a figure from parts of uncertainty that are independent.</summary>
    public static Figure Of(string name, double value, Unit unit, Derivation how,
        params ImmutableArray<(string Name, double Uncertainty)> parts) =>
        new(name, value, Calculations.Doubt.Uncertainty.Combined([.. parts.Select(part => (1.0, part.Uncertainty))]),
            unit,
            how) { Parts = parts };

    /// <summary>Holds it against limits, ends included.</summary>
    /// <param name="low">SI base; null for none.</param>
    /// <param name="high">SI base; null for none.</param>
    public Finding Against(double? low, double? high, string settle, Citation source, double? nominal = null) => new(
        Zone.Weigh(Value, Uncertainty, Zone.LowBelow(low ?? double.NegativeInfinity),
            Zone.WithinUpTo(high ?? double.PositiveInfinity), Zone.Above(VerdictKind.High)),
        Reasoned(low, high), [Band(low, nominal, high)], settle, source);

    public ExpectedBand Band(double? low, double? nominal, double? high) => new(
        Name, low?.In(Unit), nominal?.In(Unit), high?.In(Unit), Value.In(Unit), Uncertainty.In(Kinds.Difference(Unit)));

    /// <summary>The whole reasoning: the probability, below it the value and its uncertainty.</summary>
    public Derivation Reasoned(double? low, double? high)
    {
        var root = Derivation.Of("P(within) = Phi((high - y) / u) - Phi((low - y) / u)", Conformance.Guide)
            .With("y", Value, Unit).With("u", Uncertainty, Kinds.Difference(Unit));
        root = low is { } least ? root.With("low", least, Unit) : root;
        root = high is { } most ? root.With("high", most, Unit) : root;
        var inside = Conformance.Of(Value, Uncertainty, low ?? double.NegativeInfinity,
            high ?? double.PositiveInfinity).Inside;
        return root.Gives("P(within)", Math.Round(inside, 9), Units.One).From(How, Combined());
    }

    private Derivation Combined()
    {
        var sum =
            Derivation.Of("u = sqrt(sum u_i^2), u_i = limit of error / sqrt(3)", Calculations.Doubt.Uncertainty.Guide);
        foreach (var (part, uncertainty) in Parts)
            sum = sum.With(part, uncertainty, Kinds.Difference(Unit));
        return sum.Gives("u", Uncertainty, Kinds.Difference(Unit));
    }
}
