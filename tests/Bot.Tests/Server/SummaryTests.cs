using System.Collections.Immutable;
using DxAssistant.Cases;
using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.Messages;
using DxAssistant.Conversation.Replies;
using DxAssistant.Conversation.Sheets;
using DxAssistant.Server.Summary;

namespace DxAssistant.Bot.Tests.Server;

public sealed class SummaryTests
{
    private static readonly DateTimeOffset Noon = new(2030, 5, 6, 12, 0, 0, TimeSpan.Zero);

    private static readonly VerdictFigures Unequal = new(
        "unequal", false, [new ShownReading("U–V", "1.2 Ω", false)], ["1.17 Ω to 1.25 Ω"], [], "rule", "source");

    [Fact]
    public void Of_WholeWalk_HasTheVerdictTheProvenFaultAndTheTimes()
    {
        var summary = Summarize(
            [new Opened("v1"), Said("t1")],
            [Said("t2"), new SymptomReported("no-start", 1, "compressor dead")],
            [Said("t3"), Readings("windings"), Seen("windings", "unequal"), Reply(Unequal)],
            [Said("t4"), new RepairDone("replace")],
            [Said("t5"), new RepairVerified("replace", "winding", true), new Closed("repaired")]);

        var part = Assert.Single(summary.Parts);
        var check = Assert.Single(part.Checks);
        Assert.Equal(Unequal, check.Figures);
        Assert.Equal(Noon.AddMinutes(2), check.At);
        Assert.Equal("winding", part.Proven);
        Assert.Equal(new SummaryRepair("replace", "winding", true, Noon.AddMinutes(4)), Assert.Single(part.Repairs));
        Assert.Equal("repaired", part.Ended);
        Assert.Equal("v1", Assert.Single(summary.Versions));
    }

    [Fact]
    public void Of_AnswerTakenBack_IsNotInIt()
    {
        var summary = Summarize(
            [new Opened("v1"), Said("t1")],
            [Said("t2"), new SymptomReported("no-start", 1, "compressor dead")],
            [Said("t3"), Seen("plug", null), Reply()],
            [Said("t4"), new TookBack()]);

        Assert.Empty(Assert.Single(summary.Parts).Checks);
    }

    [Fact]
    public void Of_StartedOver_EarlierPartKeepsItsUnit()
    {
        var summary = Summarize(
            [new Opened("v1"), Said("t1")],
            [Said("t2"), new SymptomReported("no-start", 1, "compressor dead"), new SeriesChosen("wall")],
            [Said("t3"), new StartedOver()]);

        Assert.Equal("wall", summary.Parts[0].Unit);
        Assert.Null(summary.Parts[^1].Unit);
    }

    [Fact]
    public void Of_SecondFault_KeepsBothParts()
    {
        var summary = Summarize(
            [new Opened("v1"), Said("t1")],
            [Said("t2"), new SymptomReported("no-start", 1, "compressor dead")],
            [Said("t3"), Seen("plug", null), Reply()],
            [Said("t4"), new RepairDone("seat"), new RepairVerified("seat", "plug-loose", true),
                new SecondFaultBegun()],
            [Said("t5"), new SymptomReported("drips", 1, "and it drips")]);

        Assert.Equal(["no-start", "drips"], summary.Parts.SelectMany(p => p.Shows));
        Assert.Equal("plug-loose", summary.Parts[0].Proven);
        Assert.Null(summary.Parts[1].Proven);
        Assert.Single(summary.Parts[0].Checks);
    }

    [Fact]
    public void Of_TwoVerdictsInOneReply_GoToTheirOwnChecks()
    {
        var other = Unequal with { Verdict = "within", Healthy = true };
        var summary = Summarize(
            [new Opened("v1"), Said("t1"), new SymptomReported("no-start", 1, "dead")],
            [Said("t2"), Readings("a"), Seen("a", "unequal"), Readings("b"), Seen("b", "within"),
                Reply(Unequal, other)]);

        Assert.Equal([Unequal, other], summary.Parts[0].Checks.Select(c => c.Figures));
    }

    [Fact]
    public void Of_ResultThatARepairMadeStale_IsShownBesideTheNewOne()
    {
        var after = Unequal with { Verdict = "within", Healthy = true };
        var summary = Summarize(
            [new Opened("v1"), Said("t1"), new SymptomReported("no-start", 1, "dead")],
            [Said("t2"), Readings("a"), Seen("a", "unequal"), Reply(Unequal)],
            [Said("t3"), new RepairVerified("weigh-in", "leak", false), new ResultsOutdated(["a"])],
            [Said("t4"), Readings("a"), Seen("a", "within"), Reply(after)]);

        Assert.Equal([Unequal, after], summary.Parts[0].Checks.Select(c => c.Figures));
        Assert.Equal([Noon.AddMinutes(1), Noon.AddMinutes(3)], summary.Parts[0].Checks.Select(c => c.At));
    }

    [Fact]
    public void Of_FaultBesideAnother_RepairIsInItWithItsTime()
    {
        var summary = Summarize(
            [new Opened("v1"), Said("t1"), new SymptomReported("shock", 1, "it tingles")],
            [Said("t2"), new RepairDone("restore-earth")],
            [Said("t3"), Seen("insulation", null), new FaultBeside("restore-earth", "earth-open", "insulation"),
                Reply()]);

        var repair = Assert.Single(Assert.Single(summary.Parts).Repairs);
        Assert.Equal(("restore-earth", "earth-open", Noon.AddMinutes(2)), (repair.Title, repair.Fault, repair.TriedAt));
        Assert.Equal((null, "insulation"), (repair.Works, repair.Beside));
    }

    [Fact]
    public void Of_CheckLeftOut_SaysWhy()
    {
        var summary = Summarize(
            [new Opened("v1"), Said("t1"), new SymptomReported("no-start", 1, "dead")],
            [Said("t2"), new CheckPassedOver("gauges", CommandWord.Cannot)]);

        Assert.Equal(new SummaryLeftOut("gauges", "Cannot do that here"), Assert.Single(summary.Parts[0].LeftOut));
    }

    private static CaseSummary Summarize(params CaseEvent[][] turns)
    {
        var log = ImmutableArray.CreateBuilder<StoredEvent>();
        for (int turn = 0; turn < turns.Length; turn++)
        {
            foreach (var happened in turns[turn])
                log.Add(new StoredEvent(log.Count + 1, $"t{turn}", Noon.AddMinutes(turn), happened));
        }

        return CaseSummary.Of("a", log.ToImmutable(), TitleBook.Empty, _ => null);
    }

    private static Said Said(string turn) => new(turn, "technician", new MessageBody.Opening());

    private static ReadingsGiven Readings(string check) =>
        new(check, [new GivenReading("U–V", "number", 1.2, "Ω", "1.2")]);

    private static OutcomeSeen Seen(string check, string? verdict) => new(check, "outcome", [1], verdict, "1.2");

    private static Replied Reply(params VerdictFigures?[] verdicts) => new(new Reply(
        [.. verdicts.Select(v => new Segment(SegmentKind.Verdict, "text", [new Provenance.Person()], v))], null, [],
        null));
}
