using DxAssistant.Knowledge.Calculations;
using DxAssistant.Knowledge.Calculations.Electrics;
using DxAssistant.Knowledge.Quantities;

namespace DxAssistant.Knowledge.Judging;

/// <summary>Three line-to-line voltages against a limit of unbalance.</summary>
/// <remarks>
/// The share of the reading in the meter's limit is common to three readings of one meter and cancels out of the ratio;
/// the counts do not. A supply whose mean is below 10 V is absent and has no unbalance.
/// </remarks>
internal sealed class VoltageUnbalanceJudge() : ReadingJudge(
    "voltage-unbalance",
    [new("L1-L2", QuantityKind.Voltage), new("L2-L3", QuantityKind.Voltage), new("L3-L1", QuantityKind.Voltage)],
    [Need.Number("limit", QuantityKind.Ratio, "largest deviation from the mean, as a share of it"), Need.Meter],
    [VerdictKind.Within, VerdictKind.High, VerdictKind.Absent])
{
    private const double DeadVolts = 10;

    protected override Citation Source => Unbalance.MotorStandard;

    protected override Contradiction? ContradictionIn(Facts facts) =>
        IsDead(facts) || Triangle.Closes(facts) ? null : new Contradiction("voltages-do-not-close");

    protected override Finding Find(Facts facts)
    {
        if (IsDead(facts)) return Absent(facts);
        var odd = OddOne.Of([facts[0], facts[1], facts[2]]);
        var unit = facts.Reading(0).Unit;
        var how = Derivation.Of("unbalance = max |x - mean| / mean", Source)
            .With("V1", facts[0], unit).With("V2", facts[1], unit).With("V3", facts[2], unit)
                .Gives("mean", odd.Mean, unit).Gives("unbalance", odd.Share, Units.Percent);
        var figure = Figure.Of("unbalance", odd.Share, Units.Percent, how,
            ("meter", odd.ShareUncertainty(OddOne.CountsOf(facts.MeterAt(odd.Index)))));
        var finding = figure.Against(null, facts.Si("limit"), ToSettle.BetterRange, Source);
        return odd.Share <= facts.Si("limit") ? finding
            : LostPhase(facts) is { } phase ? finding with { OddOneOut = phase, Pattern = "phase-lost" }
            : finding with { OddOneOut = facts.Label(odd.Index) };
    }

    private static bool IsDead(Facts facts) => facts[0] + facts[1] + facts[2] < 3 * DeadVolts;

    private Finding Absent(Facts facts)
    {
        var unit = facts.Reading(0).Unit;
        var how = Derivation.Of("absent when (V1 + V2 + V3) / 3 < 10 V", Citation.CommonPractice)
            .With("V1", facts[0], unit).With("V2", facts[1], unit).With("V3", facts[2], unit);
        return new Finding(Finding.Certainly(VerdictKind.Absent), how,
            [.. facts.Indices.Select(index => new ExpectedBand(
                facts.Label(index), null, null, null, facts[index].In(unit), null))],
            ToSettle.Repeat, Source);
    }

    // A lost phase hangs in the middle of the two others, held there by the windings of the load: each of its two
    // readings is half of the third. Hand computed for a star of equal windings.
    private static string? LostPhase(Facts facts)
    {
        int[] rising = [.. facts.Indices.OrderBy(index => facts[index])];
        var half = facts[rising[2]] / 2;
        return facts[rising[0]] >= 0.8 * half && facts[rising[1]] <= 1.2 * half
            ? TerminalNames.Common(facts.Label(rising[0]), facts.Label(rising[1])) : null;
    }
}
