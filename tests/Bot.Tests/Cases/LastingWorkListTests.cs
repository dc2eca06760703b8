using System.Globalization;
using DxAssistant.Cases;
using DxAssistant.Cases.WorkList;

namespace DxAssistant.Bot.Tests.Cases;

/// <summary>Besides: a database finds what the plain list in memory finds.</summary>
public abstract class LastingWorkListTests : WorkListTests
{
    [StoreFact]
    public async Task Search_RandomLogsAndWords_AgreesWithTheOneInMemory()
    {
        int seed = Environment.TickCount;
        var random = new Random(seed);
        string[] words = ["fan", "fans", "fault", "water", "wat", "555 0142 33", "SN-12", "sn", "été"];
        await using var memory = new MemoryCaseStore(TimeProvider.System);
        for (int number = 0; number < 60; number++)
        {
            string id = Name(number % 25);
            string text = string.Join(' ', random.GetItems(words, 3));
            long last = (await memory.ReadAsync(id)).Length;
            foreach (var store in new ICaseStore[] { memory, Store })
                await store.AppendAsync(id, last, Name(number), [Words("t", text)]);
        }

        foreach (string text in words.Concat(["fa wa", "sn 12", "f", "ét", "0142", "555014233"]))
            Assert.True(
                await NamesAsync(memory, new WorkQuery(text)) == await NamesAsync(Store, new WorkQuery(text)),
                $"{text}, seed {seed}");
    }

    // A word of every turn would be gone through for every turn of all cases.
    [StoreFact]
    public async Task Append_WordOfEveryTurn_IsIndexedOnceACase()
    {
        foreach (string id in new[] { "a", "b" })
            for (int turn = 0; turn < 5; turn++)
                await Store.AppendAsync(id, turn, Name(turn), [Words("t", $"Done. DONE, done {turn}")]);

        Assert.Equal(2, await EntriesAsync("done"));
        Assert.Equal("b a", await NamesAsync(Store, new WorkQuery("done 3")));
    }

    /// <summary>How many entries of the index have a word.</summary>
    protected abstract Task<long> EntriesAsync(string word);

    private static string Name(int number) => number.ToString("000", CultureInfo.InvariantCulture);
}
