using System.Collections.Immutable;
using DxAssistant.Cases;
using DxAssistant.Cases.WorkList;
using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.Messages;
using DxAssistant.Conversation.Replies;

namespace DxAssistant.Bot.Tests.Cases;

/// <summary>What a work list finds, the same in every store that keeps one.</summary>
public abstract class WorkListTests : IAsyncLifetime
{
    private ICaseStore store = null!;

    protected ICaseStore Store => store;

    protected abstract Task<ICaseStore> MakeAsync();

    public async Task InitializeAsync() => store = await MakeAsync();

    public async Task DisposeAsync() => await store.DisposeAsync();

    [StoreTheory]
    [InlineData("water", "b a")]
    [InlineData("WAT drips", "b")]
    [InlineData("sn-00", "b a")]
    [InlineData("SN-0042", "a")]
    [InlineData("5550142", "b")]
    [InlineData("555 01 42", "b")]
    [InlineData("Ingrid", "c")]
    [InlineData("fan-motor", "c")]
    [InlineData("w", "")]
    [InlineData("gyroscope", "")]
    [InlineData("\" OR *) NEAR(", "")]
    [InlineData("", "c b a")]
    public async Task Search_Words_FindsTheCasesNewestFirst(string text, string found)
    {
        await FillAsync(store);
        Assert.Equal(found, await NamesAsync(store, new WorkQuery(text)));
    }

    [StoreFact]
    public async Task Search_JobBesideAnEndedWalk_IsFoundByItAndStaysEnded()
    {
        await FillAsync(store);
        var log = await store.ReadAsync("b");
        await store.AppendAsync("b", log.Length, "job", [
            new UnitNoted("tom", 1, null, null, "TD-2309-41725", null, "5 Mill Lane"),
            new PersonNoted("tom", 1, "owner", "Ann Ottery", "555 77 31"), new NoteWritten("tom", "Ladder needed"),
        ]);
        foreach (string words in new[] { "TD-2309", "td230941725", "mill lane", "ottery", "5557731", "ladder" })
            Assert.Equal("b", await NamesAsync(store, new WorkQuery(words)));
        Assert.Equal("b", await NamesAsync(store, new WorkQuery("", Open: false)));
    }

    // The unit is written down before anybody has said what is wrong.
    [StoreFact]
    public async Task Search_NothingSaidYet_IsFoundByWhatWasWrittenDownAlone()
    {
        await FillAsync(store);
        await store.AppendAsync("d", 0, "job",
            [new Opened("v1"), new UnitNoted("tom", 1, null, null, "TD-2309-41725", null, null)]);

        Assert.Equal("",
            Assert.Single((await store.SearchAsync(new WorkQuery("td2309"))).Lines, line => line.Id == "d").Title);
        Assert.Equal("c b a", await NamesAsync(store, new WorkQuery("")));
    }

    [StoreTheory]
    [InlineData("wall", null, null, "Newest", "b a")]
    [InlineData("wall", null, true, "Newest", "a")]
    [InlineData(null, "fan-motor", null, "Newest", "c")]
    [InlineData(null, null, false, "Newest", "b")]
    [InlineData(null, null, null, "Oldest", "a b c")]
    [InlineData(null, null, null, "Series", "b a c")]
    [InlineData(null, null, null, "Fault", "c b a")]
    public async Task Search_FiltersAndOrder_AreKept(string? series, string? fault, bool? open, string order,
        string found)
    {
        await FillAsync(store);
        Assert.Equal(found,
            await NamesAsync(store, new WorkQuery("", series, fault, open, Enum.Parse<WorkOrder>(order))));
    }

    [StoreTheory]
    [InlineData("Newest")]
    [InlineData("Oldest")]
    [InlineData("Series")]
    [InlineData("Fault")]
    public async Task Search_PageByPage_IsTheListAndNothingTwice(string order)
    {
        foreach (var (id, series, fault) in new[]
            { ("a", "wall", "fan"), ("b", null, "fan"), ("c", "duct", null), ("d", "wall", "board"), ("e", null, null),
                ("f", "wall", "fan"), ("g", "duct", "board") })
        {
            await store.AppendAsync(id, 0, "t1", [
                Words("t1", "water"), .. series is null ? [] : new CaseEvent[] { new SeriesChosen(series) },
                .. fault is null
                    ? []
                    : new CaseEvent[] { new Replied(new Reply([], null, [new BeliefLine(fault, fault, 0.6)], null)) },
            ]);
        }

        foreach (string text in new[] { "", "water" })
        {
            var query = new WorkQuery(text, Order: Enum.Parse<WorkOrder>(order));
            string whole = await NamesAsync(store, query);
            Assert.Equal(7, whole.Split(' ').Length);
            foreach (int limit in new[] { 1, 2, 3, 7 })
                Assert.Equal(whole, await PagesAsync(query with { Limit = limit }));
        }
    }

    // As a program reads it: by the address of the next page.
    private async Task<string> PagesAsync(WorkQuery query)
    {
        var names = new List<string>();
        for (int page = 0; page < 20; page++)
        {
            var read = await store.SearchAsync(query);
            Assert.InRange(read.Lines.Length, 1, query.Limit);
            names.AddRange(read.Lines.Select(line => line.Id));
            if (read.Next is not { } next) return string.Join(' ', names);
            Assert.True(WorkPlace.TryRead(next.ToString(), out var place));
            query = query with { After = place };
        }

        return "no end";
    }

    [StoreFact]
    public async Task Search_WordsOfDifferentTurns_AreFoundTogether()
    {
        await FillAsync(store);
        await store.AppendAsync("a", 3, "later", [Words("later", "the customer Halvorsen called again")]);
        Assert.Equal("a", await NamesAsync(store, new WorkQuery("halvorsen water")));
        Assert.Equal("a c b", await NamesAsync(store, new WorkQuery()));
    }

    [StoreFact]
    public async Task Search_TurnThatWasRefused_IsNotInIt()
    {
        await FillAsync(store);
        Assert.IsType<AppendResult.Conflict>(await store.AppendAsync("a", 1, "lost", [Words("lost", "gyroscope")]));
        Assert.Equal("", await NamesAsync(store, new WorkQuery("gyroscope")));
    }

    [StoreFact]
    public async Task Blank_Words_AreFoundNoMore_ResultsAre()
    {
        await FillAsync(store);
        await store.BlankAsync("a");
        Assert.Equal("b", await NamesAsync(store, new WorkQuery("water")));
        Assert.Equal("a", await NamesAsync(store, new WorkQuery("", Series: "wall", Open: true)));
        Assert.Equal("c b a", await NamesAsync(store, new WorkQuery()));
    }

    protected static async Task FillAsync(ICaseStore store)
    {
        await store.AppendAsync("a", 0, "t1",
            [new Opened("v"), Words("t1", "water on the wall, SN-0042"), new SeriesChosen("wall")]);
        await store.AppendAsync("b", 0, "t1",
            [Words("t1", "Water drips; SN-0077, phone (555) 01-42"), new SeriesChosen("wall"), new Closed("repaired")]);
        await store.AppendAsync("c", 0, "t1",
            [Words("t1", "Ingrid says the fan stands"),
                new Replied(new Reply([], null, [new BeliefLine("fan-motor", "Fan motor", 0.6)], null)),
                new RepairVerified("change", "fan-motor", true)]);
        await store.AppendAsync("silent", 0, "t1", [new Opened("v")]);
    }

    protected static Said Words(string turn, string text) => new(turn, "technician", new MessageBody.Words(text));

    protected static async Task<string> NamesAsync(IWorkList store, WorkQuery query) =>
        string.Join(' ', (await store.SearchAsync(query)).Lines.Select(line => line.Id));
}
