using DxAssistant.Knowledge.Calculations;
using DxAssistant.Knowledge.Calculations.Electrics;
using DxAssistant.Knowledge.Quantities;

namespace DxAssistant.Knowledge.Judging;

/// <summary>The direct-voltage bus against the peak of the supply, or against a boosted value.</summary>
/// <remarks>With a boost stage at work the bus stands at the boost voltage, or at the peak where that is
/// higher.</remarks>
internal sealed class DcBusJudge() : ReadingJudge(
    "dc-bus",
    [new("supply", QuantityKind.Voltage), new("bus", QuantityKind.Voltage)],
    [
        Need.Number("tolerance", QuantityKind.Ratio, "how far the bus may be off"),
        Need.Meter,
        Need.Number("boost", QuantityKind.Voltage, "bus voltage while a boost stage works", required: false),
    ],
    [VerdictKind.Within, VerdictKind.Low, VerdictKind.High])
{
    private const double DeadVolts = 10;

    protected override Citation Source => Rectifier.Circuit;

    // The leads may lie either way round on the bus; a dead supply says nothing about it.
    protected override bool IsPossible(Facts facts, int index) => index == 1 || facts[0] >= DeadVolts;

    protected override Finding Find(Facts facts)
    {
        var bus = Math.Abs(facts[1]);
        var peak = Rectifier.Peak(Voltage.FromVolts(facts[0])).Volts;
        var nominal = Math.Max(peak, facts.Or("boost", 0));
        var tolerance = facts.Si("tolerance");
        var unit = facts.Reading(1).Unit;
        var how = Derivation.Of(facts.Has("boost") ? "expected = larger of boost and sqrt(2) supply"
            : "expected = sqrt(2) supply", Source)
            .With("supply", facts[0], facts.Reading(0).Unit);
        how = (facts.Has("boost") ? how.With("boost", facts.Si("boost"), unit) : how)
            .With("tolerance", tolerance, Units.Percent).Gives("expected", nominal, unit);
        var fromSupply = nominal > peak ? 0 : Math.Sqrt(2) * facts.OfMeter(0);
        var figure = Figure.Of(facts.Label(1), bus, unit, how,
            ("meter on the bus", facts.MeterAt(1).StandardUncertainty(bus)), ("meter on the supply", fromSupply));
        return figure.Against(nominal * (1 - tolerance), nominal * (1 + tolerance), ToSettle.Repeat, Source, nominal);
    }
}
