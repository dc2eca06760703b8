using System.Collections.Immutable;
using DxAssistant.Bot.Tests.Conversation;
using DxAssistant.Bot.Tests.Server;
using DxAssistant.Cases;
using DxAssistant.Cases.Brought;
using DxAssistant.Cases.Jobs;
using DxAssistant.Conversation;
using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.Messages;
using DxAssistant.Conversation.State;
using DxAssistant.Graph.Model;

namespace DxAssistant.Bot.Tests.Cases.Jobs;

/// <summary>
/// What was done on a unit before is found by its serial number, said, and counted by what the pages state.
/// </summary>
public sealed class EarlierWorkTests : IAsyncDisposable
{
    private const string Serial = "BW24071532";
    private const string Repair = "replace-indoor-fan-motor";
    private const string Fault = "indoor-fan-motor-failed";
    private const string Loose = "indoor-fan-plug-loose";
    private static readonly DateTimeOffset Spring = new(2030, 3, 6, 8, 0, 0, TimeSpan.Zero);

    private readonly SetClock clock = new(Spring);
    private readonly MemoryCaseStore store;
    private readonly CaseDesk walk;
    private readonly JobDesk desk;
    private readonly EarlierDesk earlier;
    private int turns;

    public EarlierWorkTests()
    {
        store = new MemoryCaseStore(clock);
        walk = new CaseDesk(store, () => Shipped.InUse.Responder);
        desk = new JobDesk(store, clock, () => Shipped.InUse.Library);
        earlier = new EarlierDesk(store, walk, clock);
    }

    public ValueTask DisposeAsync() => store.DisposeAsync();

    [Fact]
    public async Task Tell_SameSerialChangedBefore_IsSaidWithItsDateAndShiftsTheOdds()
    {
        await RepairedAsync("old", Serial);
        clock.Time = Spring.AddDays(60);
        await OpenAsync("new", "E5", "Brenholt WS", "steady", "technician");
        var before = Belief(await StateAsync("new"));

        await NoteUnitAsync("new", "bw 2407 1532");

        var state = await StateAsync("new");
        Assert.Equal<EarlierWork>([new EarlierWork("old", new(2030, 3, 6), 60, Repair, Fault)], state.Earlier);
        Assert.Contains(state.LastReply!.Segments,
            segment => segment.Text.Contains("2030-03-06", StringComparison.Ordinal)
            && segment.Text.Contains(ShippedContent.Library.Repairs[new RepairId(Repair)].Title.Text,
                StringComparison.Ordinal));
        var odds = ShippedContent.Library.EarlierOdds.First(row => row.Within >= 60);
        var after = Belief(state);
        Assert.Equal(odds.SamePart / odds.LeftByWork, Ratio(after) / Ratio(before), 1e-9);
        Assert.NotEqual(1, odds.SamePart / odds.LeftByWork);
    }

    [Fact]
    public async Task Why_AfterEarlierWork_NamesTheOddsAndTheirPage()
    {
        await RepairedAsync("old", Serial);
        clock.Time = Spring.AddDays(60);
        await OpenAsync("new", "E5", "Brenholt WS", "steady", "technician");
        await NoteUnitAsync("new", Serial);

        var reply = await SayAsync("new", "why");

        var line = Assert.Single(reply.Reply.Segments,
            segment => segment.Text.Contains("0.3 times", StringComparison.Ordinal));
        Assert.Contains("60 days ago", line.Text, StringComparison.Ordinal);
        Assert.Contains(line.From,
            from => from is DxAssistant.Conversation.Replies.Provenance.Page { Path: "words.md" });
    }

    [Fact]
    public async Task Tell_CaseOfSomebodyElse_SaysPartAndMonthAndNothingMore()
    {
        await RepairedAsync("old", Serial);
        clock.Time = Spring.AddDays(50);
        await OpenAsync("new", "E5", "Brenholt WS", "steady", "technician");
        await desk.DoAsync("new", "unit", new JobAct.NoteUnit(null, null, null, Serial, null, null), "tom");

        string? told = await earlier.TellAsync("new", "unit", "tom", visit: false, new EarlierSight(id => id != "old"));

        Assert.Equal(Serial, told);
        var state = await StateAsync("new");
        Assert.Equal<EarlierWork>([new EarlierWork("", new(2030, 3, 1), 55, Repair, Fault)], state.Earlier);
        Assert.Contains(state.LastReply!.Segments,
            segment => segment.Text.Contains("2030-03", StringComparison.Ordinal));
        Assert.DoesNotContain(state.LastReply!.Segments,
            segment => segment.Text.Contains("2030-03-", StringComparison.Ordinal));
        Assert.DoesNotContain("\"old\"",
            string.Join(' ', (await store.ReadRowsAsync("new")).Rows.Select(row => row.Body + row.Aside)));
        Assert.Contains((await SayAsync("new", "why")).Reply.Segments,
            segment => segment.Text.Contains("about 60 days ago", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Tell_TooManyNumbersTyped_LooksUpNoCaseOfOthers()
    {
        await RepairedAsync("old", Serial);
        await OpenAsync("new", "E5", "Brenholt WS", "steady", "technician");
        await desk.DoAsync("new", "unit", new JobAct.NoteUnit(null, null, null, Serial, null, null), "tom");

        Assert.Null(await earlier.TellAsync("new", "unit", "tom", visit: false,
            new EarlierSight(id => id != "old", MayLookUp: false)));
        Assert.Empty((await StateAsync("new")).Earlier);
    }

    [Theory]
    [InlineData("BW24071533", 60)]
    [InlineData(null, 60)]
    [InlineData(Serial, 800)]
    public async Task Tell_AnotherSerialOrLongAgo_ChangesNoOdds(string? serial, int days)
    {
        await RepairedAsync("old", serial);
        clock.Time = Spring.AddDays(days);
        await OpenAsync("new", "E5", "Brenholt WS", "steady", "technician");
        var before = Belief(await StateAsync("new"));

        await NoteUnitAsync("new", Serial);

        Assert.Equal(before, Belief(await StateAsync("new")));
    }

    [Fact]
    public async Task Tell_SerialCorrected_TakesTheEvidenceBack()
    {
        await RepairedAsync("old", Serial);
        await OpenAsync("new", "E5", "Brenholt WS", "steady", "technician");
        await NoteUnitAsync("new", Serial);
        Assert.NotEmpty((await StateAsync("new")).Earlier);

        await NoteUnitAsync("new", "BW24071599", 1);

        Assert.Empty((await StateAsync("new")).Earlier);
    }

    [Fact]
    public async Task Tell_TheSameAgain_TakesNoTurn()
    {
        await RepairedAsync("old", Serial);
        await OpenAsync("new", "E5");
        await NoteUnitAsync("new", Serial);
        int length = (await store.ReadAsync("new")).Length;

        await earlier.TellAsync("new", "again", "tom", visit: false, EarlierSight.Whole);

        Assert.Equal(length, (await store.ReadAsync("new")).Length);
    }

    [Fact]
    public async Task Tell_AnotherVisitToAClosedCase_OpensItAgainWithItsOwnRepairAsEvidence()
    {
        await RepairedAsync("old", Serial);
        Assert.NotNull((await StateAsync("old")).ClosedHow);
        clock.Time = Spring.AddDays(30);
        await desk.DoAsync("old", "visit", new JobAct.BeginVisit(), "tom");

        await earlier.TellAsync("old", "visit", "tom", visit: true, EarlierSight.Whole);

        var state = await StateAsync("old");
        Assert.Null(state.ClosedHow);
        Assert.Empty(state.Results);
        Assert.Null(state.Access);
        Assert.Equal(new EarlierWork("old", new(2030, 3, 6), 30, Repair, Fault), Assert.Single(state.Earlier));
        Assert.NotNull(state.Question);
    }

    // Evidence is looked up here; from elsewhere it is not taken, whatever it says of itself.
    [Fact]
    public async Task Brought_EarlierWorkOfItsOwnMaking_IsRefused()
    {
        await OpenAsync("new", "E5");
        var log = await store.ReadAsync("new");
        var forged = new Message("t9",
            new MessageBody.Earlier([new EarlierWork("x", new(2030, 3, 1), 5, Repair, Fault)], false), "tom");
        var turn = Shipped.InUse.Responder.Respond([.. log.Select(stored => stored.Event)], forged);
        var brought = new BroughtDesk(store, _ => Shipped.InUse.Responder);

        var answer = await brought.TakeAsync("new", log.Length, [new BroughtTurn("t9", turn.Events)], "tom");

        Assert.IsType<BroughtAnswer.DoesNotFollow>(answer);
    }

    [Fact]
    public void In_FaultPutRightBesideAnother_IsEarlierWorkOnceTheUnitWorks()
    {
        CaseEvent[] walked =
        [
            new Opened("v1"), new SymptomReported("shock-from-casing", 1, "it tingles"),
            new RepairDone("restore-earth"),
            new FaultBeside("restore-earth", "earth-open", "unit-insulation"), new RepairDone(Repair), Verified(),
            new Closed("repaired"),
        ];
        ImmutableArray<StoredEvent> log =
            [.. walked.Select((happened, place) => new StoredEvent(place + 1, "t", Spring, happened))];
        EarlierWork earth = new("old", new(2030, 3, 6), 0, "restore-earth", "earth-open"), motor =
            new("old", new(2030, 3, 6), 0, Repair, Fault);
        Assert.Equal<EarlierWork>([motor, earth], EarlierCases.In("old", log, null, new(2030, 3, 6)));
        Assert.Empty(EarlierCases.In("old", log[..4], null, new(2030, 3, 6)));
    }

    // A case as it ends when the motor was changed and the unit works.
    private async Task RepairedAsync(string id, string? serial)
    {
        await OpenAsync(id, "E5", "Brenholt WS", "steady", "technician");
        var log = await store.ReadAsync(id);
        await store.AppendAsync(id, log.Length, "repaired",
            [new Said("repaired", "tom", new MessageBody.Words("works")), new RepairDone(Repair), Verified(),
                new Closed("repaired"), Reply(log)]);
        if (serial is not null)
            await desk.DoAsync(id, "unit", new JobAct.NoteUnit(null, "brenholt-ws", null, serial, null, null), "tom");
    }

    private static RepairVerified Verified() => new(Repair, Fault, true);

    private static Replied Reply(ImmutableArray<StoredEvent> log) =>
        log.Select(stored => stored.Event).OfType<Replied>().Last();

    private async Task NoteUnitAsync(string id, string serial, int? unit = null)
    {
        string turn = $"u{++turns}";
        Assert.IsType<JobAnswer.Saved>(
            await desk.DoAsync(id, turn, new JobAct.NoteUnit(unit, "brenholt-ws", null, serial, null, null), "tom"));
        await earlier.TellAsync(id, turn, "tom", visit: false, EarlierSight.Whole);
    }

    private async Task OpenAsync(string id, params string[] words)
    {
        await walk.OpenAsync(id, "tom");
        foreach (string text in words) await SayAsync(id, text);
    }

    private async Task<DeskAnswer.Answered> SayAsync(string id, string text) =>
        (DeskAnswer.Answered)await walk.TakeAsync(id, new Message($"t{++turns}", new MessageBody.Words(text), "tom"));

    private async Task<CaseState> StateAsync(string id) =>
        Fold.Apply(CaseState.New, (await store.ReadAsync(id)).Select(stored => stored.Event));

    private static (double Motor, double Plug) Belief(CaseState state) => (
        Standing.BeliefIn(ShippedContent.Library, state, new FaultId(Fault)),
        Standing.BeliefIn(ShippedContent.Library, state, new FaultId(Loose)));

    private static double Ratio((double Motor, double Plug) belief) => belief.Motor / belief.Plug;
}
