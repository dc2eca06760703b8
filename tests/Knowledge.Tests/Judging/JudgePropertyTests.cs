using System.Collections.Immutable;
using DxAssistant.Knowledge.Judging;
using DxAssistant.Knowledge.Quantities;
using DxAssistant.Knowledge.Readings;

namespace DxAssistant.Knowledge.Tests.Judging;

/// <summary>What holds for the verdict of every judge, whatever was read. Random ones say their seed.</summary>
public sealed class JudgePropertyTests
{
    private const int Seed = 20_261_125;

    public static TheoryData<string> Names() => [.. JudgeCatalogue.All.Keys];

    [Theory]
    [MemberData(nameof(Names))]
    public void Judge_ReadingsInOtherUnits_GiveTheSameVerdict(string name)
    {
        var random = new Random(Seed);
        var (judge, good) = (JudgeCatalogue.All[name], GoodRequests.Of(name));
        for (var run = 0; run < 200; run++)
        {
            ImmutableArray<Reading> read = [.. good.Readings.Select(reading => Scaled(reading, random))];
            var one = judge.Judge(good with { Readings = read });
            var other =
                judge.Judge(good with { Readings = [.. read.Select(reading => InAnotherUnit(reading, random))] });
            var said = $"{name}, seed {Seed}, run {run}: {string.Join(", ", read)}";
            Assert.True(one.Verdict == other.Verdict && one.PatternKey == other.PatternKey, said);
            foreach (var (verdict, probability) in one.Probabilities)
                Assert.True(Math.Abs(probability - other.Probabilities[verdict]) <= 1e-7, said);
        }
    }

    // The density of a normal distribution is at most 0.4 / u: across any limit the probability of a verdict rises no
    // steeper than that, for each of the limits that may move together.
    [Theory]
    [MemberData(nameof(Names))]
    public void Judge_AnyReadingWalked_ProbabilitiesNeverJump(string name)
    {
        const int steps = 15_000;
        var (judge, good) = (JudgeCatalogue.All[name], GoodRequests.Of(name));
        for (var index = 0; index < good.Readings.Length; index++)
        {
            ImmutableSortedDictionary<VerdictKind, double>? before = null;
            for (var step = 0; step <= steps; step++)
            {
                var walked = good.Readings[index]
                    with { Value = good.Readings[index].Value * (0.7 + 0.6 * step / steps) };
                var judgement = judge.Judge(good with { Readings = good.Readings.SetItem(index, walked) });
                var now = judgement.Verdict == VerdictKind.Impossible ? null : judgement.Probabilities;
                if (before is not null && now is not null)
                    foreach (var verdict in judge.Verdicts)
                        Assert.True(Math.Abs(now[verdict] - before[verdict]) < 0.1, $"{name} jumps at {walked}");
                before = now;
            }
        }
    }

    private static Reading Scaled(Reading reading, Random random) =>
        reading with { Value = reading.Value * Math.Exp((random.NextDouble() - 0.5) * 0.8) };

    private static Reading InAnotherUnit(Reading reading, Random random)
    {
        Unit[] units = [.. Unit.All.Where(unit => unit.Kind == reading.Unit.Kind)];
        var unit = units[random.Next(units.Length)];
        return reading with { Unit = unit, Value = unit.ToSi(unit.FromSi(reading.Value)) };
    }
}
