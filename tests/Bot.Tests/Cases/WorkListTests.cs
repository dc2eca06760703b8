using System.Collections.Immutable;
using System.Globalization;
using DxAssistant.Cases;
using DxAssistant.Cases.Sqlite;
using DxAssistant.Cases.WorkList;
using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.Messages;
using DxAssistant.Conversation.Replies;
using Microsoft.Data.Sqlite;

namespace DxAssistant.Bot.Tests.Cases;

/// <summary>What a work list finds, the same in every store that keeps one.</summary>
public sealed class WorkListTests : IDisposable
{
    private readonly TemporaryFolder folder = new();

    [Theory]
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
        foreach (var store in Stores())
        {
            await using (store)
            {
                await FillAsync(store);
                Assert.Equal(found, await NamesAsync(store, new WorkQuery(text)));
            }
        }
    }

    [Fact]
    public async Task Search_JobBesideAnEndedWalk_IsFoundByItAndStaysEnded()
    {
        foreach (var store in Stores())
        {
            await using (store)
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
        }
    }

    [Theory]
    [InlineData("wall", null, null, "Newest", "b a")]
    [InlineData("wall", null, true, "Newest", "a")]
    [InlineData(null, "fan-motor", null, "Newest", "c")]
    [InlineData(null, null, false, "Newest", "b")]
    [InlineData(null, null, null, "Oldest", "a b c")]
    [InlineData(null, null, null, "Series", "b a c")]
    [InlineData(null, null, null, "Fault", "c b a")]
    public async Task Search_FiltersAndOrder_AreKept(string? series, string? fault, bool? open, string order, string found)
    {
        foreach (var store in Stores())
        {
            await using (store)
            {
                await FillAsync(store);
                Assert.Equal(found, await NamesAsync(store, new WorkQuery("", series, fault, open, Enum.Parse<WorkOrder>(order))));
            }
        }
    }

    [Fact]
    public async Task Search_WordsOfDifferentTurns_AreFoundTogether()
    {
        foreach (var store in Stores())
        {
            await using (store)
            {
                await FillAsync(store);
                await store.AppendAsync("a", 3, "later", [Words("later", "the customer Halvorsen called again")]);
                Assert.Equal("a", await NamesAsync(store, new WorkQuery("halvorsen water")));
                Assert.Equal("a c b", await NamesAsync(store, new WorkQuery()));
            }
        }
    }

    [Fact]
    public async Task Search_TurnThatWasRefused_IsNotInIt()
    {
        foreach (var store in Stores())
        {
            await using (store)
            {
                await FillAsync(store);
                Assert.IsType<AppendResult.Conflict>(await store.AppendAsync("a", 1, "lost", [Words("lost", "gyroscope")]));
                Assert.Equal("", await NamesAsync(store, new WorkQuery("gyroscope")));
            }
        }
    }

    [Fact]
    public async Task Blank_Words_AreFoundNoMore_ResultsAre()
    {
        foreach (var store in Stores())
        {
            await using (store)
            {
                await FillAsync(store);
                await store.BlankAsync("a");
                Assert.Equal("b", await NamesAsync(store, new WorkQuery("water")));
                Assert.Equal("a", await NamesAsync(store, new WorkQuery("", Series: "wall", Open: true)));
                Assert.Equal("c b a", await NamesAsync(store, new WorkQuery()));
            }
        }
    }

    // A file from before there was an index is indexed when it is opened.
    [Fact]
    public async Task Open_FileWithoutIndex_IsIndexed()
    {
        string file = folder.File("old.db");
        await using (var store = SqliteCaseStore.Open(file, TimeProvider.System)) await FillAsync(store);
        await using (var connection = new SqliteConnection($"Data Source={file};Pooling=False"))
        {
            await connection.OpenAsync();
            await using var command = connection.CreateCommand();
            command.CommandText = "DROP TABLE work_text; DROP TABLE work;";
            await command.ExecuteNonQueryAsync();
        }

        await using var again = SqliteCaseStore.Open(file, TimeProvider.System);
        Assert.Equal("b a", await NamesAsync(again, new WorkQuery("water")));
    }

    [Fact]
    public async Task Search_RandomLogsAndWords_StoresAgree()
    {
        int seed = Environment.TickCount;
        var random = new Random(seed);
        string[] words = ["fan", "fans", "fault", "water", "wat", "555 0142 33", "SN-12", "sn", "été"];
        await using var memory = new MemoryCaseStore(TimeProvider.System);
        await using var sqlite = SqliteCaseStore.Open(folder.File("random.db"), TimeProvider.System);
        for (int number = 0; number < 60; number++)
        {
            string id = Name(number % 25);
            string text = string.Join(' ', random.GetItems(words, 3));
            long last = (await memory.ReadAsync(id)).Length;
            foreach (var store in new ICaseStore[] { memory, sqlite }) await store.AppendAsync(id, last, Name(number), [Words("t", text)]);
        }

        foreach (string text in words.Concat(["fa wa", "sn 12", "f", "ét", "0142", "555014233"]))
            Assert.True(
                await NamesAsync(memory, new WorkQuery(text)) == await NamesAsync(sqlite, new WorkQuery(text)), $"{text}, seed {seed}");
    }

    public void Dispose() => folder.Dispose();

    private ICaseStore[] Stores() =>
        [new MemoryCaseStore(TimeProvider.System), SqliteCaseStore.Open(folder.File("cases.db"), TimeProvider.System)];

    private static async Task FillAsync(ICaseStore store)
    {
        await store.AppendAsync("a", 0, "t1", [new Opened("v"), Words("t1", "water on the wall, SN-0042"), new SeriesChosen("wall")]);
        await store.AppendAsync("b", 0, "t1", [Words("t1", "Water drips; SN-0077, phone (555) 01-42"), new SeriesChosen("wall"), new Closed("repaired")]);
        await store.AppendAsync("c", 0, "t1", [Words("t1", "Ingrid says the fan stands"), new Replied(new Reply([], null, [new BeliefLine("fan-motor", "Fan motor", 0.6)], null)), new RepairVerified("change", "fan-motor", true)]);
        await store.AppendAsync("silent", 0, "t1", [new Opened("v")]);
    }

    private static Said Words(string turn, string text) => new(turn, "technician", new MessageBody.Words(text));

    private static string Name(int number) => number.ToString("000", CultureInfo.InvariantCulture);

    private static async Task<string> NamesAsync(ICaseStore store, WorkQuery query) =>
        string.Join(' ', (await ((IWorkList)store).SearchAsync(query)).Select(line => line.Id));
}
