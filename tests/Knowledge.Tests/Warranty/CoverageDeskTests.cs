using DxAssistant.Graph.Model;
using DxAssistant.Knowledge.Content;
using DxAssistant.Knowledge.Tests.Content;
using DxAssistant.Knowledge.Warranty;

namespace DxAssistant.Knowledge.Tests.Warranty;

/// <summary>
/// Worked on a calendar by hand. The terms of the small folder: sensors 24 months, 60 when registered within 60 days;
/// every other part 1 month, 13 when registered; work 12 months, 25 minutes for the room sensor.
/// </summary>
public class CoverageDeskTests
{
    private static readonly Library Tiny = ContentCompiler.Compile(TinyContent.Folder).Library!;

    [Theory]
    [InlineData("2024-03-10", "2026-03-09", CoverageAnswer.Covered)]
    [InlineData("2024-03-10", "2026-03-10", CoverageAnswer.NotCovered)]
    [InlineData("2024-02-29", "2026-02-27", CoverageAnswer.Covered)]
    [InlineData("2024-02-29", "2026-02-28", CoverageAnswer.NotCovered)]
    public void Assess_SensorNotRegistered_EndsAfterTwentyFourMonths(string installed, string failed,
        CoverageAnswer expected) =>
        Assert.Equal(expected, Sensor(installed, null, failed).Part);

    // 60 days after 10 March are 9 May: 21 in March, 30 in April, 9 in May.
    [Theory]
    [InlineData("2024-05-09", CoverageReasonKind.RegisteredInTime, CoverageAnswer.Covered, "2029-03-10")]
    [InlineData("2024-05-10", CoverageReasonKind.RegisteredLate, CoverageAnswer.NotCovered, "2026-03-10")]
    [InlineData(null, CoverageReasonKind.NotRegistered, CoverageAnswer.NotCovered, "2026-03-10")]
    public void Assess_FailedInTheFifthYear_DependsOnRegistration(
        string? registered, CoverageReasonKind first, CoverageAnswer part, string until)
    {
        CoverageDecision decision = Sensor("2024-03-10", registered, "2028-12-01");
        Assert.Equal(part, decision.Part);
        Assert.Equal(first, decision.Reasons[0].Kind);
        Assert.Equal(Day(until), decision.Reasons[1].Until);
    }

    [Theory]
    [InlineData("2025-03-09", CoverageAnswer.Covered, 25)]
    [InlineData("2025-03-10", CoverageAnswer.NotCovered, 0)]
    public void Assess_Work_IsPaidForTwelveMonths(string failed, CoverageAnswer labour, double minutes)
    {
        CoverageDecision decision = Sensor("2024-03-10", null, failed);
        Assert.Equal((CoverageAnswer.Covered, labour, minutes),
            (decision.Part, decision.Labour, decision.LabourMinutes));
    }

    // 31 January and a month: the last day of February is the first that is not covered.
    [Theory]
    [InlineData("2024-02-28", CoverageAnswer.Covered)]
    [InlineData("2024-02-29", CoverageAnswer.NotCovered)]
    public void Assess_PartInNoClass_IsEveryOtherPart(string failed, CoverageAnswer expected)
    {
        CoverageDecision decision = Assess("fan-motor-failed", "replace-fan-motor", "2024-01-31", null, failed);
        Assert.Equal(expected, decision.Part);
        Assert.Equal("every other part", decision.Reasons[1].On.Text);
    }

    [Fact]
    public void Assess_RepairWithoutMinutes_PaysThePartAlone()
    {
        CoverageDecision decision = Assess("fan-motor-failed", "replace-fan-motor", "2024-01-31", null, "2024-02-01");
        Assert.Equal((CoverageAnswer.Covered, CoverageAnswer.NotCovered), (decision.Part, decision.Labour));
        Assert.Equal(CoverageReasonKind.NoAllowance, decision.Reasons[^1].Kind);
    }

    [Fact]
    public void Assess_StartUnknown_IsLeftOpen()
    {
        CoverageDecision decision = Sensor(null, null, "2024-02-01");
        Assert.Equal(CoverageAnswer.Unsettled, decision.Part);
        Assert.Equal(CoverageReasonKind.StartUnknown, Assert.Single(decision.Reasons).Kind);
    }

    [Fact]
    public void Assess_FailedBeforeTheStart_IsLeftOpen() =>
        Assert.Equal(CoverageReasonKind.FailedBeforeStart,
            Assert.Single(Sensor("2024-03-10", null, "2024-03-09").Reasons).Kind);

    [Fact]
    public void Assess_SiteCondition_IsNoPartFailure()
    {
        CoverageDecision decision = Assess("none-of-these", "watch-and-record", "2024-03-10", null, "2024-04-01");
        Assert.Equal(CoverageAnswer.NotCovered, decision.Part);
        CoverageReason reason = Assert.Single(decision.Reasons);
        Assert.Equal((CoverageReasonKind.SiteCondition, "Warranty"), (reason.Kind, reason.On.Place.Heading));
    }

    [Fact]
    public void Assess_EveryShippedFaultAndSeries_HasReasonsOnPages()
    {
        Library shipped = ContentCompiler.Compile(RepositoryFolder.Read("content")).Library!;
        foreach (string series in shipped.Series.Keys)
            foreach (FaultId fault in shipped.Faults.Keys)
            {
                RepairId repair = shipped.Graph.RepairsOf(fault).First().Id;
                CoverageDecision decision = CoverageDesk.Assess(shipped, new CoverageQuery(
                    series, Day("2024-03-10"), Day("2024-03-01"), null, Day("2024-06-01"), fault, repair));
                Assert.NotEmpty(decision.Reasons);
                Assert.Equal(decision.LabourMinutes > 0, decision.Labour == CoverageAnswer.Covered);
            }
    }

    private static CoverageDecision Sensor(string? installed, string? registered, string failed) =>
        Assess("room-sensor-failed", "replace-room-sensor", installed, registered, failed);

    private static CoverageDecision Assess(string fault, string repair, string? installed, string? registered,
        string failed) =>
        CoverageDesk.Assess(Tiny, new CoverageQuery("alder-one", installed is null ? null : Day(installed), null,
            registered is null ? null : Day(registered), Day(failed), new FaultId(fault), new RepairId(repair)));

    private static DateOnly Day(string text) =>
        DateOnly.ParseExact(text, "yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture);
}
