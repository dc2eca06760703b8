using DxAssistant.Knowledge.Calculations;
using DxAssistant.Knowledge.Calculations.Electrics;
using DxAssistant.Knowledge.Quantities;

namespace DxAssistant.Knowledge.Judging;

/// <summary>A run capacitor from its current and voltage under load.</summary>
/// <remarks>The meter's share of the reading counts for both readings; its counts only for the one of their
/// unit.</remarks>
internal sealed class CapacitorJudge() : ReadingJudge(
    "capacitor",
    [new("current", QuantityKind.Current), new("voltage", QuantityKind.Voltage)],
    [
        Need.Number("rated", QuantityKind.Capacitance, "on the nameplate"),
        Need.Number("tolerance", QuantityKind.Ratio, "on the nameplate"),
        Need.Number("frequency", QuantityKind.Frequency, "of the supply"),
        Need.Meter,
    ],
    [VerdictKind.Within, VerdictKind.Low, VerdictKind.High])
{
    protected override Citation Source => Capacitors.Nameplate;

    protected override bool IsPossible(Facts facts, int index) => index == 0 ? facts[0] >= 0 : facts[1] > 1;

    protected override Finding Find(Facts facts)
    {
        var (current, voltage) = (Current.FromAmperes(facts[0]), Voltage.FromVolts(facts[1]));
        var farads = Capacitors.UnderLoad(current, voltage, Frequency.FromHertz(facts.Si("frequency"))).Farads;
        var unit = facts.Number("rated").Unit;
        var (rated, tolerance) = (facts.Si("rated"), facts.Si("tolerance"));
        var how = Derivation.Of("C = I / (2 pi f V)", Capacitors.Reactance).With("I", facts[0], facts.Reading(0).Unit)
            .With("V", facts[1], facts.Reading(1).Unit).With("f", facts.Si("frequency"), Units.Hertz)
                .Gives("C", farads, unit);
        var perAmpere = farads / Math.Max(facts[0], 1e-9);
        return Figure.Of("C", farads, unit, how, ("current", perAmpere * Of(facts, 0)),
            ("voltage", farads / facts[1] * Of(facts, 1)))
            .Against(rated * (1 - tolerance), rated * (1 + tolerance), ToSettle.Repeat, Source, rated);
    }

    private static double Of(Facts facts, int index)
    {
        var promise = facts.MeterAt(index);
        var meter = promise.Resolution.Kind == facts.Reading(index).Unit.Kind ? promise : promise with { Counts = 0 };
        return meter.StandardUncertainty(facts[index]);
    }
}
