using System.Text.Json;
using DxAssistant.Bot.Tests.Cases.Photos;
using DxAssistant.Cases;
using DxAssistant.Cases.Export;
using DxAssistant.Cases.Photos;
using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.Messages;

namespace DxAssistant.Bot.Tests.Cases.Export;

public sealed class CaseDocumentTests : IAsyncLifetime
{
    private static readonly SchemaForm Schema = SchemaForm.Read(
        Repository.PathOf("bot", "Cases", "Export", "case.schema.json"));

    private CaseDocument document = null!;
    private CaseDocument blanked = null!;

    public async Task InitializeAsync()
    {
        await using var store = new MemoryCaseStore(TimeProvider.System);
        await store.AppendAsync("a", 0, "t1", [Words("fan dead — \"Ω\" 🔧 <b>")]);
        await store.AppendAsync("a", 1, "t2", [new CodeReported("b4", "steady"), new ReadingsGiven("plug",
            [new GivenReading("R", "number", 0.1 + 0.2, "kΩ", "0.3k")])]);
        document = new CaseDocument("a", (await store.ReadRowsAsync("a")).Rows);
        await store.BlankAsync("a");
        blanked = new CaseDocument("a", (await store.ReadRowsAsync("a")).Rows);
    }

    public Task DisposeAsync() => Task.CompletedTask;

    [Fact]
    public void Read_WhatWasWritten_IsTheSameRowForRow()
    {
        var read = CaseDocument.Read(document.Write());

        Assert.Equal("a", read.Id);
        Assert.Equal(
            document.Rows.Select(row => (row.Sequence, row.TurnId, row.At, row.Body, row.Hash)),
            read.Rows.Select(row => (row.Sequence, row.TurnId, row.At, row.Body, row.Hash)));
        Assert.Equal(Words("fan dead — \"Ω\" 🔧 <b>"), read.Open()[0].Event);
    }

    [Fact]
    public void Write_BeforeAndAfterBlanking_FitsTheSchema()
    {
        Assert.True(Fits(document.Write()));
        Assert.True(Fits(blanked.Write()));
        Assert.Equal(Words("[removed]"), CaseDocument.Read(blanked.Write()).Open()[0].Event);
    }

    [Fact]
    public async Task TakeIn_JobWithAPhoto_IsTheSameElsewhereAndFitsTheSchema()
    {
        await using var here = new MemoryCaseStore(TimeProvider.System);
        await using var there = new MemoryCaseStore(TimeProvider.System);
        var whole = await WithPhotoAsync(here);

        Assert.True(Fits(whole.Write()));
        Assert.True(await CaseExchange.TakeInAsync(there, CaseDocument.Read(whole.Write())));
        Assert.Equal<StoredEvent>(await here.ReadAsync("p"), await there.ReadAsync("p"));
        Assert.Equal(SmallPictures.Png, await there.PhotoAsync("p", Photo.HashOf(SmallPictures.Png)));
        Assert.True(await CaseExchange.IsSoundAsync(there, "p"));
    }

    [Fact]
    public async Task TakeIn_PhotoOfAnotherHashOrOfNoEntry_IsRefused()
    {
        await using var store = new MemoryCaseStore(TimeProvider.System);
        var whole = await WithPhotoAsync(store);
        var swapped = whole with { Photos = [new KeptPhoto(whole.Photos[0].Hash, SmallPictures.Jpeg)] };
        var page = "<script>"u8.ToArray();
        var added = whole with { Photos = [.. whole.Photos, new KeptPhoto(Photo.HashOf(page), page)] };

        foreach (var bad in new[] { swapped, added })
            await Assert.ThrowsAsync<CaseFileException>(
                () => CaseExchange.TakeInAsync(new MemoryCaseStore(TimeProvider.System), bad));
    }

    private static async Task<CaseDocument> WithPhotoAsync(MemoryCaseStore store)
    {
        string hash = Photo.HashOf(SmallPictures.Png);
        await store.AppendAsync("p", 0, "t1",
            [new UnitNoted("tom", 1, "tarn-duo", null, "TD-2309-41725", new(2029, 1, 2), "5 Mill Lane"),
            new PhotoTaken("tom", hash, "image/png", SmallPictures.Png.Length, "nameplate", 1),
            new VisitBegun("tom", 2)]);
        await store.KeepPhotoAsync("p", hash, SmallPictures.Png);
        return (await CaseExchange.TakeOutAsync(store, "p"))!;
    }

    [Theory]
    [InlineData("\"version\": 1", "\"version\": 2")]
    [InlineData("\"case\": \"a\"", "\"case\": \"../a\"")]
    [InlineData("\"sequence\": 1", "\"sequence\": 0")]
    [InlineData("\"turn\": \"t1\"", "\"turn\": 1")]
    [InlineData("\"hash\": \"", "\"hash\": \"Z")]
    public void Schema_AnotherForm_DoesNotFit(string good, string bad) =>
        Assert.False(Fits(document.Write().Replace(good, bad, StringComparison.Ordinal)));

    [Theory]
    [InlineData("b4", "b5")]
    [InlineData("fan dead", "fan good")]
    [InlineData("0.30000000000000004", "0.4")]
    [InlineData("\"turn\": \"t2\"", "\"turn\": \"t3\"")]
    [InlineData("\"case\": \"a\"", "\"case\": \"b\"")]
    public void Open_AlteredText_IsRefused(string was, string altered)
    {
        string text = document.Write();
        Assert.Contains(was, text, StringComparison.Ordinal);

        var read = CaseDocument.Read(text.Replace(was, altered, StringComparison.Ordinal));

        Assert.Contains("was altered", Assert.Throws<CaseFileException>(() => read.Open()).Message,
            StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("")]
    [InlineData("[]")]
    [InlineData("{}")]
    [InlineData("""{"format":"dxassistant-case","version":2,"case":"a","entries":[]}""")]
    [InlineData("""{"format":"dxassistant-case","version":1,"case":"a","entries":[{"sequence":1}]}""")]
    public void Read_AnythingElse_SaysThatItIsNoCase(string text) => Assert.StartsWith(
        "that is not an exported case", Assert.Throws<CaseFileException>(() => CaseDocument.Read(text)).Message,
        StringComparison.Ordinal);

    private static bool Fits(string text)
    {
        using var json = JsonDocument.Parse(text);
        return Schema.Fits(json.RootElement);
    }

    private static Said Words(string text) => new("t", "technician", new MessageBody.Words(text));
}
