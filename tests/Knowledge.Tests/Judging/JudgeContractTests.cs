using System.Collections.Immutable;
using DxAssistant.Knowledge.Judging;
using DxAssistant.Knowledge.Quantities;
using DxAssistant.Knowledge.Readings;

namespace DxAssistant.Knowledge.Tests.Judging;

/// <summary>What holds for every judge.</summary>
public sealed class JudgeContractTests
{
    public static TheoryData<string> Names() => [.. JudgeCatalogue.All.Keys];

    [Fact]
    public void All_Names_AreThoseOfTheContentFormat() =>
        Assert.Equal(GoodRequests.Inputs.Keys.Order(StringComparer.Ordinal), JudgeCatalogue.All.Keys);

    [Theory]
    [MemberData(nameof(Names))]
    public void Judge_AnyReadings_ProbabilitiesSumToOneAndVerdictFollowsThem(string name)
    {
        const int seed = 77;
        var random = new Random(seed);
        var judge = JudgeCatalogue.All[name];
        var inputs = Ask.Inputs(judge, GoodRequests.Inputs[name]);
        for (var i = 0; i < 400; i++)
            AssertSound(judge, judge.Judge(new JudgeRequest(Any(judge, random), inputs)),
                $"{name}, seed {seed}, run {i}");
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Judge_RequiredInputMissing_Throws(string name)
    {
        var judge = JudgeCatalogue.All[name];
        var inputs = Ask.Inputs(judge, GoodRequests.Inputs[name]);
        Assert.Null(judge.ProblemWith(inputs));
        foreach (var need in judge.Inputs.Where(need => need.Required))
        {
            Assert.Contains(need.Name, judge.ProblemWith(inputs.Remove(need.Name)), StringComparison.Ordinal);
            Assert.Throws<ArgumentException>(() => judge.Judge(new JudgeRequest([], inputs.Remove(need.Name))));
        }
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Judge_UnknownInputOrWrongCount_Throws(string name)
    {
        var judge = JudgeCatalogue.All[name];
        var inputs = Ask.Inputs(judge, GoodRequests.Inputs[name]);
        Assert.NotNull(judge.ProblemWith(inputs.Add("colour", new JudgeInput.Word("red"))));
        Assert.Throws<ArgumentException>(() => judge.Judge(new JudgeRequest([], inputs)));
    }

    [Theory]
    [InlineData("band", "low = 51 Ω; high = 41 Ω; meter = 1 %")]
    [InlineData("continuity", "closed = 20 kΩ; open = 10 kΩ; meter = 1 %")]
    [InlineData("supply-limits", "nominal = 230 Ω; below = 10 %; above = 10 %; meter = 1 %")]
    [InlineData("supply-limits", "nominal = 230 V; below = 10 %; above = 10 %; meter = 1 % + 3 × 0.1 Ω")]
    public void ProblemWith_BadInputs_SaysSo(string name, string inputs) =>
        Assert.NotNull(JudgeCatalogue.All[name].ProblemWith(Ask.Inputs(JudgeCatalogue.All[name], inputs)));

    // Walking a reading across a limit in small steps never makes a probability jump.
    [Theory]
    [InlineData("supply-limits", 190, 270, "V")]
    [InlineData("supply-limits", 10, 40, "V")]
    [InlineData("continuity", 0.5, 4, "Ω")]
    [InlineData("band", 38, 54, "Ω")]
    [InlineData("insulation", 0.5, 2, "MΩ")]
    public void Judge_AcrossALimit_ProbabilityMovesSmoothly(string name, double from, double to, string unit)
    {
        var judge = JudgeCatalogue.All[name];
        var inputs = Ask.Inputs(judge, GoodRequests.Inputs[name]);
        Assert.True(Unit.TryParse(unit, out var known));
        ImmutableSortedDictionary<VerdictKind, double>? before = null;
        for (var i = 0; i <= 4000; i++)
        {
            var now = judge.Judge(new JudgeRequest([Reading.Of(from + (to - from) * i / 4000, known)], inputs))
                .Probabilities;
            foreach (var verdict in judge.Verdicts)
                Assert.True(before is null || Math.Abs(now[verdict] - before[verdict]) < 0.02,
                    $"{name} jumps at step {i}");
            before = now;
        }
    }

    [Theory]
    [InlineData("thermistor-curve", "11.9 kΩ|20 °C", "11900 Ω|68 °F")]
    [InlineData("superheat", "600 kPa|12 °C", "87.0226 psig|53.6 °F")]
    [InlineData("temperature-split", "25 °C|16.5 °C", "77 °F|61.7 °F")]
    [InlineData("band", "51.3 Ω", "0.0513 kΩ")]
    [InlineData("capacitor", "3.7 A|302 V", "3700 mA|0.302 kV")]
    public void Judge_SameReadingInAnotherUnit_GivesTheSameVerdict(string name, string one, string other)
    {
        var (first, second) = (Ask.Judge(name, GoodRequests.Inputs[name], one.Split('|')),
            Ask.Judge(name, GoodRequests.Inputs[name], other.Split('|')));
        Assert.Equal(first.Verdict, second.Verdict);
        foreach (var (verdict, probability) in first.Probabilities)
            Assert.Equal(probability, second.Probabilities[verdict], 1e-4);
    }

    [Fact]
    public void Judge_SetsInAnotherOrder_GiveTheSameVerdict()
    {
        var first = Ask.Judge("winding-balance", GoodRequests.Inputs["winding-balance"], "1.00 Ω", "1.05 Ω", "1.12 Ω");
        var second = Ask.Judge("winding-balance", GoodRequests.Inputs["winding-balance"], "1.12 Ω", "1.00 Ω", "1.05 Ω");
        Assert.Equal(first.Probabilities, second.Probabilities);
    }

    private static void AssertSound(IJudge judge, Judgement judgement, string said)
    {
        if (judgement.Verdict == VerdictKind.Impossible)
        {
            Assert.Contains(judgement.ToSettleKey!, ToSettle.All);
            return;
        }
        Assert.True(Math.Abs(judgement.Probabilities.Values.Sum() - 1) < 1e-6, said);
        Assert.All(judgement.Probabilities.Values, probability => Assert.InRange(probability, 0, 1));
        Assert.Equal(judge.Verdicts.Order(), judgement.Probabilities.Keys);
        var best = judgement.Probabilities.MaxBy(pair => pair.Value);
        if (judgement.Verdict == VerdictKind.TooCloseToCall)
        {
            Assert.True(best.Value < DecisionRule.Probability, said);
            Assert.Contains(judgement.ToSettleKey!, ToSettle.All);
        }
        else
        {
            Assert.True(best.Key == judgement.Verdict && best.Value >= DecisionRule.Probability, said);
            Assert.Null(judgement.ToSettleKey);
        }
        Assert.NotEmpty(judgement.Expected);
    }

    private static ImmutableArray<Reading> Any(IJudge judge, Random random)
    {
        var count = judge.Counts[random.Next(judge.Counts.Length)];
        return [.. judge.Readings.Take(count).Select(need => One(need.Kind ?? QuantityKind.Resistance, random))];
    }

    private static Reading One(QuantityKind kind, Random random)
    {
        var units = Unit.All.Where(unit => unit.Kind == kind).ToArray();
        var unit = units[random.Next(units.Length)];
        var state = random.Next(10) switch { 0 => ReadingState.OpenCircuit, 1 => ReadingState.ShortCircuit, _ =>
            ReadingState.Number };
        var si = Math.Pow(10, random.NextDouble() * 9 - 3) * (random.Next(8) == 0 ? -1 : 1);
        return new Reading(null, state, state == ReadingState.Number ? si : 0, unit, "");
    }
}
