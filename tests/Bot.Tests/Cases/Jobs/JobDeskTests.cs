using System.Text.Json;
using DxAssistant.Bot.Tests.Server;
using DxAssistant.Cases;
using DxAssistant.Cases.Jobs;
using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.State;

namespace DxAssistant.Bot.Tests.Cases.Jobs;

/// <summary>What is written down about a job beside the walk, and what is refused.</summary>
public sealed class JobDeskTests : IAsyncDisposable
{
    private static readonly DateTimeOffset Morning = new(2030, 5, 6, 8, 0, 0, TimeSpan.Zero);

    private readonly SetClock clock = new(Morning);
    private readonly MemoryCaseStore store;
    private readonly JobDesk desk;
    private int turns;

    public JobDeskTests()
    {
        store = new MemoryCaseStore(clock);
        desk = new JobDesk(store, clock, () => Shipped.InUse.Library);
    }

    public ValueTask DisposeAsync() => store.DisposeAsync();

    [Fact]
    public async Task Do_Unit_IsKeptAsThePlateWritesIt()
    {
        var job = await SavedAsync(
            new JobAct.NoteUnit(null, "ostvik-duct", "OH 24", "oh23k104412", new(2028, 3, 1), "5 Mill Lane"));

        Assert.Equal(
            new JobUnit(1, "ostvik-duct", "OH 24", "OH23-K104412", new(2028, 3, 1), "5 Mill Lane", Morning, "tom"),
            job.Unit);
    }

    [Fact]
    public async Task Do_SerialWithoutASeries_IsFoundByItsForm() =>
        Assert.Equal("TD-2309-41725", (await SavedAsync(Unit(null, "td230941725"))).Unit!.Serial);

    [Theory]
    [InlineData("brenholt-ws", "BW2407153", "looks like BW24071532. This one has 9 letters and digits, not 10.", null)]
    [InlineData("brenholt-ws", "BW24O71532", "Was it BW24071532?", "BW24071532")]
    [InlineData("brenholt-ws", "BX24071532", "a letter or a digit in the wrong place", null)]
    [InlineData("brenholt-ws", "TD-2309-41725", "TD-2309-41725 is a serial number of the Tarn Duo", null)]
    [InlineData("brenholt-ws", "--", "letters or digits", null)]
    [InlineData("nobody-knows", "BW24071532", "no such series", null)]
    public async Task Do_SerialThatDoesNotFit_SaysWhatIsWrongAndWritesNothing(string series, string serial, string why,
        string? meant)
    {
        var refused = Assert.IsType<JobAnswer.Refused>(await DoAsync(Unit(series, serial)));

        Assert.Contains(why, refused.Why, StringComparison.Ordinal);
        Assert.Equal(meant, refused.Meant);
        Assert.Empty((await desk.ReadAsync("a"))!.Units);
    }

    [Fact]
    public async Task Do_SeveralUnits_AreNumberedCorrectedAndTurnedTo()
    {
        await SavedAsync(Unit("brenholt-ws", "BW24071532"));
        await SavedAsync(Unit("tarn-duo", "TD-2309-41725"));
        await SavedAsync(new JobAct.TurnToUnit(2));
        var job = await SavedAsync(new JobAct.NoteUnit(1, "brenholt-ws", null, "BW24071533", null, null));

        Assert.Equal(["BW24071533", "TD-2309-41725"], job.Units.Select(unit => unit.Serial));
        Assert.Equal(2, job.Unit!.Number);
        Assert.IsType<JobAnswer.Refused>(await DoAsync(new JobAct.TurnToUnit(3)));
        Assert.IsType<JobAnswer.Refused>(await DoAsync(new JobAct.NoteUnit(3, null, null, null, null, null)));
    }

    [Fact]
    public async Task Do_Visits_HaveTheirTimes()
    {
        await OpenAsync();
        clock.Time = Morning.AddHours(1);
        await SavedAsync(new JobAct.EndVisit());
        Assert.IsType<JobAnswer.Refused>(await DoAsync(new JobAct.EndVisit()));
        clock.Time = Morning.AddDays(2);
        await SavedAsync(new JobAct.BeginVisit());
        clock.Time = Morning.AddDays(3);
        var job = await SavedAsync(new JobAct.BeginVisit());

        Assert.Equal<JobVisit>(
            [
                new(1, Morning, Morning.AddHours(1), "tom"), new(2, Morning.AddDays(2), Morning.AddDays(3), "tom"),
                new(3, Morning.AddDays(3), null, "tom"),
            ], job.Visits);
    }

    // Each change is taken back in turn, the last one first, and then all is as it was.
    [Fact]
    public async Task TakeBack_EachChange_LeavesTheJobAsItWasBefore()
    {
        await OpenAsync();
        JobAct[] acts =
        [
            Unit("brenholt-ws", "BW24071532"), Unit("tarn-duo", "TD-2309-41725"), new JobAct.TurnToUnit(2),
            new JobAct.NoteUnit(1, "brenholt-ws", "WS 9", null, null, null),
            new JobAct.NotePerson(null, "owner", "Ann Ottery", null),
            new JobAct.NotePerson(1, "owner", "Ann Otter", "555 01 42"),
            new JobAct.WriteNote("Dog in the yard."), new JobAct.EndVisit(), new JobAct.BeginVisit(),
        ];
        var before = new Stack<string>([Told((await desk.ReadAsync("a"))!)]);
        foreach (var act in acts) before.Push(Told(await SavedAsync(act)));

        foreach (string what in new[] { "begun", "ended", "note", "person", "person", "unit", "turned", "unit",
            "unit" })
        {
            Assert.Equal(before.Pop(), Told((await desk.ReadAsync("a"))!));
            var last = (await desk.ReadAsync("a"))!.Change!;
            Assert.Equal(what, last.What);
            await SavedAsync(new JobAct.TakeBack(last.Turn));
        }

        Assert.Equal(before.Pop(), Told((await desk.ReadAsync("a"))!));
        Assert.Null((await desk.ReadAsync("a"))!.Change);
    }

    [Fact]
    public async Task TakeBack_WhatIsNotTheLastChange_IsRefused()
    {
        await SavedAsync(new JobAct.WriteNote("First."));
        string first = (await desk.ReadAsync("a"))!.Change!.Turn;
        await SavedAsync(new JobAct.WriteNote("Second."));

        Assert.IsType<JobAnswer.Refused>(await DoAsync(new JobAct.TakeBack(first)));
        Assert.IsType<JobAnswer.Refused>(await DoAsync(new JobAct.TakeBack("nobody")));
        Assert.Equal(2, (await desk.ReadAsync("a"))!.Notes.Length);
    }

    [Fact]
    public async Task Do_InstalledTomorrowWeek_IsRefused() => Assert.IsType<JobAnswer.Refused>(
        await DoAsync(
            new JobAct.NoteUnit(null, null, null, null, DateOnly.FromDateTime(Morning.UtcDateTime).AddDays(7), null)));

    [Theory]
    [InlineData("customer", "", null)]
    [InlineData("king", "Ann", null)]
    [InlineData(null, null, null)]
    public async Task Do_PersonWithoutNameOrPart_IsRefused(string? part, string? name, string? phone) =>
        Assert.IsType<JobAnswer.Refused>(await DoAsync(new JobAct.NotePerson(null, part!, name!, phone)));

    [Fact]
    public async Task Do_TextTooLong_IsRefused()
    {
        Assert.IsType<JobAnswer.Refused>(
            await DoAsync(new JobAct.WriteNote(new string('x', JobRules.LongestNote + 1))));
        Assert.IsType<JobAnswer.Refused>(
            await DoAsync(new JobAct.NotePerson(null, "owner", new string('x', JobRules.LongestField + 1), null)));
    }

    [Fact]
    public async Task Do_SentAgain_IsWrittenDownOnce()
    {
        await OpenAsync();
        await desk.DoAsync("a", "t1", new JobAct.WriteNote("Dog in the yard."), "tom");
        var again = Assert.IsType<JobAnswer.Saved>(
            await desk.DoAsync("a", "t1", new JobAct.WriteNote("Dog in the yard."), "tom"));

        Assert.Equal(new JobNote("Dog in the yard.", Morning, "tom"), Assert.Single(again.Job.Notes));
    }

    [Fact]
    public async Task Do_UnknownCase_MakesNone()
    {
        Assert.IsType<JobAnswer.Unknown>(await desk.DoAsync("b", "t", new JobAct.WriteNote("x"), "tom"));
        Assert.Empty(await store.NamesAsync());
    }

    // The walk takes no notice: the same messages get the same replies, with and without a job beside them.
    [Fact]
    public async Task Do_BetweenTurnsOfAWalk_ChangesNoReply()
    {
        var walk = new CaseDesk(store, () => Shipped.InUse.Responder);
        await walk.OpenAsync("plain", "tom");
        foreach (string text in new[] { "b4", "Brenholt WS", "technician", "why" })
        {
            await SavedAsync(new JobAct.WriteNote(text));
            var beside = await walk.TakeAsync("a", Message(text), default);
            var alone = await walk.TakeAsync("plain", Message(text), default);
            Assert.Equal(
                ((DeskAnswer.Answered)alone).Reply.Segments.Select(s => s.Text),
                ((DeskAnswer.Answered)beside).Reply.Segments.Select(s => s.Text));
        }

        Assert.Equal(StateOf(await store.ReadAsync("plain")), StateOf(await store.ReadAsync("a")));
    }

    private static string Told(Job job) => JsonSerializer.Serialize(job with { Change = null });

    private static string StateOf(IEnumerable<StoredEvent> log)
    {
        var state = Fold.Apply(CaseState.New, log.Select(stored => stored.Event));
        return $"{state.Turns} {state.Step} {state.Question?.Id} {string.Join(' ', state.Symptoms)}";
    }

    private static DxAssistant.Conversation.Messages.Message Message(string text) =>
        new($"m-{text}", new DxAssistant.Conversation.Messages.MessageBody.Words(text), "tom");

    private static JobAct.NoteUnit Unit(string? series, string serial) => new(null, series, null, serial, null, null);

    private async Task<JobAnswer> DoAsync(JobAct act)
    {
        await OpenAsync();
        return await desk.DoAsync("a", $"t{++turns}", act, "tom");
    }

    private async Task OpenAsync() => await new CaseDesk(store, () => Shipped.InUse.Responder).OpenAsync("a", "tom");

    private async Task<Job> SavedAsync(JobAct act) => Assert.IsType<JobAnswer.Saved>(await DoAsync(act)).Job;
}
