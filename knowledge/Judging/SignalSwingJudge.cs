using DxAssistant.Knowledge.Calculations;
using DxAssistant.Knowledge.Quantities;

namespace DxAssistant.Knowledge.Judging;

/// <summary>A signal line that must swing: its lowest and highest voltage.</summary>
internal sealed class SignalSwingJudge() : ReadingJudge(
    "signal-swing",
    [new("lowest", QuantityKind.Voltage), new("highest", QuantityKind.Voltage)],
    [Need.Number("swing", QuantityKind.Voltage, "least swing of a live signal"), Need.Meter],
    [VerdictKind.Within, VerdictKind.Low])
{
    protected override Citation Source => Citation.CommonPractice with { Place = "a live signal swings" };

    // A signal line may swing below its return.
    protected override bool IsPossible(Facts facts, int index) => true;

    protected override Finding Find(Facts facts)
    {
        var swing = Math.Abs(facts[1] - facts[0]);
        var unit = facts.Reading(1).Unit;
        var how = Derivation.Of("swing = highest - lowest", Source).With("lowest", facts[0], facts.Reading(0).Unit)
            .With("highest", facts[1], unit).Gives("swing", swing, unit);
        return Figure.Of("swing", swing, unit, how, ("meter on lowest", facts.OfMeter(0)),
            ("meter on highest", facts.OfMeter(1)))
            .Against(facts.Si("swing"), null, ToSettle.Repeat, Source);
    }
}
