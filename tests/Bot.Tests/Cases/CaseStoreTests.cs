using System.Collections.Immutable;
using DxAssistant.Cases;
using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.Messages;

namespace DxAssistant.Bot.Tests.Cases;

/// <summary>What every store of cases must do; a store's own test class only says how to make one.</summary>
public abstract class CaseStoreTests : IAsyncLifetime
{
    protected static readonly DateTimeOffset Noon = new(2030, 5, 6, 12, 0, 0, TimeSpan.Zero);

    private readonly SetClock clock = new(Noon);
    private ICaseStore store = null!;

    protected ICaseStore Store => store;

    protected abstract Task<ICaseStore> MakeAsync(TimeProvider clock);

    public async Task InitializeAsync() => store = await MakeAsync(clock);

    public async Task DisposeAsync() => await store.DisposeAsync();

    [StoreFact]
    public async Task ReadAsync_UnknownCase_IsEmpty() => Assert.Empty(await store.ReadAsync("none"));

    [StoreFact]
    public async Task LastAsync_IsTheNumberOfTheLastEntry()
    {
        Assert.Equal(0, await store.LastAsync("a"));
        await store.AppendAsync("a", 0, "t1", Events("b4", "b5"));
        await store.AppendAsync("b", 0, "t1", Events("b4"));
        await store.AppendAsync("a", 2, "t2", Events("b6"));

        Assert.Equal(3, await store.LastAsync("a"));
    }

    [StoreFact]
    public async Task MarkAsync_ChangesWithEachTurnAndWhenWordsAreRemoved()
    {
        Assert.Equal(CaseMark.None, await store.MarkAsync("a"));
        await store.AppendAsync("a", 0, "t1", Events("b4", "b5"));
        var first = await store.MarkAsync("a");
        await store.AppendAsync("b", 0, "t1", Events("b4"));
        Assert.Equal(first, await store.MarkAsync("a"));
        Assert.Equal(new CaseMark(2, (await store.ReadAsync("a"))[^1].Hash, 0), first);

        await store.AppendAsync("a", 2, "t2", Events("b6"));
        var second = await store.MarkAsync("a");
        await store.BlankAsync("a");

        Assert.NotEqual(first, second);
        Assert.NotEqual(second, await store.MarkAsync("a"));
    }

    [StoreFact]
    public async Task AppendAsync_FirstTurn_NumbersFromOneAndStampsTheTime()
    {
        var result = await store.AppendAsync("a", 0, "t1", Events("b4", "b5"));

        var appended = Assert.IsType<AppendResult.Appended>(result);
        Assert.Equal([1L, 2L], appended.Events.Select(e => e.Sequence));
        Assert.All(appended.Events, e => Assert.Equal(Noon, e.At));
        Assert.Equal<StoredEvent>(appended.Events, await store.ReadAsync("a"));
    }

    [StoreFact]
    public async Task AppendAsync_SecondTurn_GoesOnCounting()
    {
        await store.AppendAsync("a", 0, "t1", Events("b4", "b5"));
        clock.Time = Noon.AddMinutes(3);
        await store.AppendAsync("a", 2, "t2", Events("b6"));

        var log = await store.ReadAsync("a");

        Assert.Equal([1L, 2L, 3L], log.Select(e => e.Sequence));
        Assert.Equal(Noon.AddMinutes(3), log[2].At);
        Assert.Equal("t2", log[2].TurnId);
    }

    [StoreTheory]
    [InlineData(0)]
    [InlineData(1)]
    [InlineData(3)]
    public async Task AppendAsync_WrongSequence_IsConflictAndAppendsNothing(long expected)
    {
        await store.AppendAsync("a", 0, "t1", Events("b4", "b5"));

        var result = await store.AppendAsync("a", expected, "t2", Events("b6"));

        Assert.Equal(new AppendResult.Conflict(2), result);
        Assert.Equal(2, (await store.ReadAsync("a")).Length);
    }

    [StoreTheory]
    [InlineData(0)]
    [InlineData(2)]
    public async Task AppendAsync_TurnThatIsThere_GivesTheStoredEvents(long expected)
    {
        await store.AppendAsync("a", 0, "t1", Events("b4", "b5"));

        var result = await store.AppendAsync("a", expected, "t1", Events("other"));

        var duplicate = Assert.IsType<AppendResult.DuplicateTurn>(result);
        Assert.Equal<StoredEvent>(await store.ReadAsync("a"), duplicate.Events);
        Assert.Equal<CaseEvent>(Events("b4", "b5"), duplicate.Events.Select(e => e.Event));
    }

    [StoreFact]
    public async Task AppendAsync_SameTurnIdInAnotherCase_IsAnotherTurn()
    {
        await store.AppendAsync("a", 0, "t1", Events("b4"));

        Assert.IsType<AppendResult.Appended>(await store.AppendAsync("b", 0, "t1", Events("b5")));
    }

    [StoreFact]
    public async Task AppendAsync_ManyAtOnce_ExactlyOneTurnTakesEachPlace()
    {
        var attempts = Enumerable.Range(0, 200).Select(i => store.AppendAsync("a", 0, $"t{i}", Events($"code {i}")));
        var results = await Task.WhenAll(attempts);

        Assert.Single(results.OfType<AppendResult.Appended>());
        Assert.Equal(199, results.OfType<AppendResult.Conflict>().Count());
        Assert.Single(await store.ReadAsync("a"));
    }

    [StoreFact]
    public async Task AppendAsync_ManyCasesAtOnce_AllAreThere()
    {
        var attempts = Enumerable.Range(0, 300).Select(i => store.AppendAsync($"case{i}", 0, "t", Events($"code {i}")));
        var results = await Task.WhenAll(attempts);

        Assert.All(results, r => Assert.IsType<AppendResult.Appended>(r));
        for (int i = 0; i < 300; i++)
        {
            var only = Assert.Single(await store.ReadAsync($"case{i}"));
            Assert.Equal(new CodeReported($"code {i}", $"code {i}"), only.Event);
        }
    }

    [StoreFact]
    public async Task AppendAsync_TextOfAnyKind_ReadsBackTheSame()
    {
        const string text = "'; DROP TABLE event; -- \u0000 \"quoted\" \n Ω → 🔧 \u202e end";
        var said = new Said("t", "o'neil", new MessageBody.Words(text));
        await store.AppendAsync("a", 0, "t", [said]);

        Assert.Equal(said, (await store.ReadAsync("a"))[0].Event);
    }

    [StoreFact]
    public async Task ListAsync_SeveralCases_NewestFirstWithTitlesAndNoneWithoutWords()
    {
        await store.AppendAsync("a", 0, "t1", [new Opened("v1")]);
        await store.AppendAsync("b", 0, "t1", Events("b4"));
        await store.AppendAsync("c", 0, "t1", [new Opened("v1")]);
        clock.Time = Noon.AddMinutes(1);
        await store.AppendAsync("a", 1, "t2",
            [new Said("t2", "technician", new MessageBody.Words("fan dead")),
                new SymptomReported("fan", 1, "fan dead")]);

        Assert.Equal<CaseLine>(
            [new CaseLine("a", "fan dead", Noon, Noon.AddMinutes(1)), new CaseLine("b", "b4", Noon, Noon)],
            await store.ListAsync(10));
        Assert.Equal("a", Assert.Single(await store.ListAsync(1)).Id);
    }

    [StoreFact]
    public async Task PageAsync_PageByPage_ShowsEachCaseOnceAndOnlyThoseNamed()
    {
        foreach (string id in new[] { "a", "b", "c", "d", "e" }) await store.AppendAsync(id, 0, "t1", Events("b4"));

        var first = await store.PageAsync(new CaseQuery(2));
        await store.AppendAsync("a", 1, "t2", Events("b5"));
        var second = await store.PageAsync(new CaseQuery(2, first.Next));
        var named = await store.PageAsync(new CaseQuery(2, null, ["b", "d", "none"]));

        Assert.Equal("e d", Names(first));
        Assert.Equal("c b", Names(second));
        Assert.Null(second.Next);
        Assert.Equal(("d b", null), (Names(named), named.Next));
        Assert.Empty((await store.PageAsync(new CaseQuery(2, null, []))).Cases);
    }

    [StoreFact]
    public async Task LeftAloneAsync_OldWithWords_LongestAgoFirst_UntilBlankedAndAgainOnceAddedTo()
    {
        await store.AppendAsync("b", 0, "t1", Events("b4"));
        clock.Time = Noon.AddDays(1);
        await store.AppendAsync("a", 0, "t1", [new Opened("v1")]);
        clock.Time = Noon.AddDays(2);
        await store.AppendAsync("c", 0, "t1", Events("b4"));

        Assert.Equal("b a", string.Join(' ', await store.LeftAloneAsync(Noon.AddDays(2), 5)));
        Assert.Equal("b", string.Join(' ', await store.LeftAloneAsync(Noon.AddDays(2), 1)));
        await store.BlankAsync("b");
        await store.BlankAsync("a");
        Assert.Empty(await store.LeftAloneAsync(Noon.AddDays(2), 5));

        await store.AppendAsync("b", 1, "t2", [Words("fan dead")]);
        Assert.Empty(await store.LeftAloneAsync(Noon.AddDays(2), 5));
        Assert.Equal("b c", string.Join(' ', await store.LeftAloneAsync(Noon.AddDays(3), 5)));
    }

    [StoreFact]
    public async Task ListAsync_TwoTitles_KeepsTheFirst()
    {
        await store.AppendAsync("a", 0, "t1", Events("b4"));
        await store.AppendAsync("a", 1, "t2", Events("b5"));

        Assert.Equal("b4", Assert.Single(await store.ListAsync(5)).Title);
    }

    [StoreFact]
    public async Task ListAsync_LimitBelowOne_Throws() =>
        await Assert.ThrowsAsync<ArgumentOutOfRangeException>(() => store.ListAsync(0));

    [StoreFact]
    public async Task AppendAsync_NoEvent_Throws() =>
        await Assert.ThrowsAsync<ArgumentException>(() => store.AppendAsync("a", 0, "t", []));

    [StoreFact]
    public async Task AppendAsync_EmptyId_Throws()
    {
        await Assert.ThrowsAsync<ArgumentException>(() => store.AppendAsync("", 0, "t", Events("b4")));
        await Assert.ThrowsAsync<ArgumentException>(() => store.AppendAsync("a", 0, "", Events("b4")));
    }

    [StoreFact]
    public async Task AppendAsync_SequenceBelowZero_Throws() =>
        await Assert.ThrowsAsync<ArgumentOutOfRangeException>(() => store.AppendAsync("a", -1, "t", Events("b4")));

    [StoreFact]
    public async Task AppendAsync_TwoTurns_HashesDependOnAllBefore()
    {
        await store.AppendAsync("a", 0, "t1", Events("b4", "b5"));
        await store.AppendAsync("b", 0, "t1", Events("b4", "b6"));

        var (one, other) = (await store.ReadAsync("a"), await store.ReadAsync("b"));

        Assert.All(one, e => Assert.Matches("^[0-9a-f]{64}$", e.Hash));
        Assert.Equal(4, one.Concat(other).Select(e => e.Hash).Distinct().Count());
    }

    [StoreFact]
    public async Task BlankAsync_OwnWords_AreGoneAndTheChainStillHolds()
    {
        var readings = new ReadingsGiven("plug", [new GivenReading("R", "number", 2100, "kΩ", "2.1k")]);
        await store.AppendAsync("a", 0, "t1", [Words("Ann Ottery of 5 Mill Lane calls, fan dead"), readings]);
        string hash = (await store.ReadAsync("a"))[^1].Hash;

        Assert.Equal(1, await store.BlankAsync("a"));
        Assert.Equal(0, await store.BlankAsync("nobody"));

        var log = await store.ReadAsync("a");
        Assert.Equal(Words("[removed]"), log[0].Event);
        Assert.Equal("2.1k", ((ReadingsGiven)log[1].Event).Readings[0].Words);
        Assert.Equal(hash, log[^1].Hash);
        Assert.Equal("[removed]", Assert.Single(await store.ListAsync(5)).Title);
        Assert.DoesNotContain("Ottery", string.Concat((await store.ReadRowsAsync("a")).Rows), StringComparison.Ordinal);
        Assert.IsType<AppendResult.Appended>(await store.AppendAsync("a", 2, "t2", Events("b4")));
    }

    [StoreFact]
    public async Task BlankAsync_JobBesideTheWalk_LosesItsPeopleAndKeepsItsUnit()
    {
        var unit =
            new UnitNoted("tom", 1, "tarn-duo", "TD 50", "TD-2309-41725", new DateOnly(2029, 1, 2), "5 Mill Lane");
        await store.AppendAsync("a", 0, "t1",
            [unit, new PersonNoted("tom", 1, "owner", "Ann Ottery", "555 01 42"),
                new NoteWritten("tom", "Ann has a dog.")]);
        string hash = (await store.ReadAsync("a"))[^1].Hash;

        Assert.Equal(3, await store.BlankAsync("a"));

        var log = await store.ReadAsync("a");
        Assert.Equal<CaseEvent>(
            [unit with { Site = "[removed]" }, new PersonNoted("tom", 1, "owner", "[removed]", "[removed]"),
                new NoteWritten("tom", "[removed]")],
            log.Select(stored => stored.Event));
        Assert.Equal(hash, log[^1].Hash);
        string rows = string.Concat((await store.ReadRowsAsync("a")).Rows);
        foreach (string words in new[] { "Ottery", "555 01 42", "Mill Lane", "dog" })
            Assert.DoesNotContain(words, rows, StringComparison.Ordinal);
    }

    [StoreFact]
    public async Task WithSerialAsync_HoweverItIsWritten_FindsEveryCaseThatNamesIt()
    {
        await using var elsewhere = new MemoryCaseStore(clock);
        await elsewhere.AppendAsync("c", 0, "t1", [Unit("TD-2309-41725")]);
        await store.AppendAsync("b", 0, "t1", [Unit("TD-2309-41725")]);
        await store.AppendAsync("B", 0, "t1", [Unit("TD-2309-41725"), Unit("TD-2309-41725")]);
        await store.AppendAsync("d", 0, "t1", [Unit("TD-2309-41726"), Unit(null)]);
        await store.TakeOverAsync("c", (await elsewhere.ReadRowsAsync("c")).Rows);

        Assert.Equal<string>(["B", "b", "c"], await store.WithSerialAsync("td2309 41725"));
        Assert.Empty(await store.WithSerialAsync("TD-2309-4172"));
        Assert.Empty(await store.WithSerialAsync(""));
    }

    [StoreFact]
    public async Task PhotoAsync_KeptTwiceDroppedAndBlanked_IsThereUntilItIsRemoved()
    {
        byte[] big = [.. Enumerable.Range(0, 300_000).Select(i => (byte)(i * 7))];
        await store.AppendAsync("a", 0, "t1", [new PhotoTaken("tom", "h1", "image/png", 3, "nameplate", 1)]);
        await store.KeepPhotoAsync("a", "h1", [1, 0, 255]);
        await store.KeepPhotoAsync("a", "h1", [1, 0, 255]);
        await store.KeepPhotoAsync("a", "h2", big);
        await store.KeepPhotoAsync("b", "h1", [9]);
        Assert.Equal([1, 0, 255], await store.PhotoAsync("a", "h1"));
        Assert.Equal(big, await store.PhotoAsync("a", "h2"));
        Assert.Null(await store.PhotoAsync("b", "h2"));

        await store.DropPhotoAsync("a", "h2");
        Assert.Null(await store.PhotoAsync("a", "h2"));
        await store.BlankAsync("a");

        Assert.Null(await store.PhotoAsync("a", "h1"));
        Assert.Equal([9], await store.PhotoAsync("b", "h1"));
        Assert.IsType<PhotoTaken>((await store.ReadAsync("a"))[0].Event);
    }

    [StoreFact]
    public async Task ReadRowsAsync_OwnWords_StandBesideTheHashedText()
    {
        await store.AppendAsync("a", 0, "t1", [Words("Ann Ottery calls")]);

        var row = Assert.Single((await store.ReadRowsAsync("a")).Rows);

        Assert.DoesNotContain("Ottery", row.Body, StringComparison.Ordinal);
        Assert.Contains("Ottery", row.Aside, StringComparison.Ordinal);
    }

    [StoreFact]
    public async Task TakeOverAsync_RowsOfAnotherStore_AreTheSameCase()
    {
        await using var elsewhere = new MemoryCaseStore(clock);
        await elsewhere.AppendAsync("a", 0, "t1", [Words("fan dead")]);
        await elsewhere.AppendAsync("a", 1, "t2", Events("b4", "b5"));
        var rows = (await elsewhere.ReadRowsAsync("a")).Rows;

        Assert.True(await store.TakeOverAsync("a", rows));
        Assert.False(await store.TakeOverAsync("a", rows));

        Assert.Equal<StoredEvent>(await elsewhere.ReadAsync("a"), await store.ReadAsync("a"));
        Assert.Equal("fan dead", Assert.Single(await store.ListAsync(5)).Title);
        Assert.IsType<AppendResult.DuplicateTurn>(await store.AppendAsync("a", 3, "t2", Events("b6")));
        Assert.Equal<string>(["a"], await store.NamesAsync());
    }

    [StoreFact]
    public async Task TakeOverAsync_AlteredRows_AreRefused()
    {
        await using var elsewhere = new MemoryCaseStore(clock);
        await elsewhere.AppendAsync("a", 0, "t1", Events("b4", "b5"));
        var rows = (await elsewhere.ReadRowsAsync("a")).Rows;

        await Assert.ThrowsAsync<CaseFileException>(() => store.TakeOverAsync("other", rows));
        await Assert.ThrowsAsync<CaseFileException>(
            () => store.TakeOverAsync("a", rows.SetItem(0, rows[0] with { At = Noon.AddDays(1) })));

        Assert.Empty(await store.NamesAsync());
    }

    private static UnitNoted Unit(string? serial) => new("tom", 1, null, null, serial, null, null);

    protected static Said Words(string text) => new("t", "technician", new MessageBody.Words(text));

    private static string Names(CasePage page) => string.Join(' ', page.Cases.Select(line => line.Id));

    protected static ImmutableArray<CaseEvent> Events(params string[] codes) =>
        [.. codes.Select(code => new CodeReported(code, code))];
}
