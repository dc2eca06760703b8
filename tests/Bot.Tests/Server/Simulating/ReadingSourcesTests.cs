using System.Collections.Immutable;
using DxAssistant.Bot.Tests.Conversation;
using DxAssistant.Graph.Testability;
using DxAssistant.Knowledge.Content;
using DxAssistant.Knowledge.Content.Model;
using DxAssistant.Knowledge.Judging;
using DxAssistant.Knowledge.Readings;
using DxAssistant.Server.Simulating;
using Xunit.Abstractions;

namespace DxAssistant.Bot.Tests.Server.Simulating;

/// <summary>The readings that are drawn for a condition are judged to be of that condition.</summary>
public sealed class ReadingSourcesTests(ITestOutputHelper output)
{
    private const ulong Seed = 20261125;
    private const int DrawsEach = 20;

    private static Library Library => ShippedContent.Library;

    public static TheoryData<string> Measurements =>
        [.. Library.Checks.Values.Where(page => page.Calculation is not null).Select(page => page.Id.Value)];

    [Fact]
    public void All_EveryCalculationOfThePages_HasASource() => Assert.All(
        Library.Checks.Values.Select(page => page.Calculation).OfType<string>(),
        name => Assert.Contains(name, ReadingSources.All.Keys));

    // A good meter may still leave a true value near a limit unsettled; never may it say the opposite.
    [Theory]
    [MemberData(nameof(Measurements))]
    public void Draw_EachOutcome_IsJudgedToBeThatOutcome(string id)
    {
        output.WriteLine($"seed {Seed}");
        CheckPage page = Library.Checks[new(id)];
        var draws = new Draws(Seed);
        int judged = 0, close = 0;
        foreach (SeriesPage series in Library.Series.Values.Where(series => page.Series.IsEmpty
            || page.Series.Contains(series.Id)))
            foreach (AnswerOption outcome in page.Outcomes)
                foreach (VerdictKind condition in outcome.Verdicts)
                    for (int draw = 0; draw < DrawsEach; draw++)
                    {
                        var setup = new ReadingSetup(page, Library.JudgeInputsFor(page, series),
                            Surroundings.Drawn(draws), draws);
                        ImmutableArray<TrueReading> readings =
                            ReadingSources.All[page.Calculation!].Draw(condition, setup);
                        if (readings.IsEmpty) continue;
                        judged++;
                        VerdictKind verdict = Judge(page, setup, readings).Verdict;
                        if (verdict == VerdictKind.TooCloseToCall) close++;
                        Assert.True(verdict == VerdictKind.TooCloseToCall || outcome.Verdicts.Contains(verdict),
                            $"{series.Id}: {string.Join(", ", readings)} drawn as {condition}, judged {verdict}");
                    }

        Assert.True(judged >= DrawsEach, $"only {judged} readings could be drawn");
        Assert.True(5 * close <= judged, $"{close} of {judged} were too close to call");
    }

    private static Judgement Judge(CheckPage page, ReadingSetup setup, ImmutableArray<TrueReading> readings) =>
        JudgeCatalogue.All[page.Calculation!].Judge(new JudgeRequest(
            [.. page.Readings.Zip(readings, (field, reading) => AsRead(field, reading))], setup.Inputs));

    private static Reading AsRead(ReadingField field, TrueReading reading) => reading.Mark is null
        ? new Reading(field.Label, ReadingState.Number, reading.Si, field.Unit, "")
        : new Reading(field.Label, ReadingState.OpenCircuit, 0, field.Unit, reading.Mark);
}
