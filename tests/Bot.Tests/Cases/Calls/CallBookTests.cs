using DxAssistant.Cases.Calls;

namespace DxAssistant.Bot.Tests.Cases.Calls;

/// <summary>Calls that were put aside wait in the order in which they are due.</summary>
public abstract class CallBookTests
{
    protected static readonly DateTimeOffset Noon = new(2030, 5, 6, 12, 0, 0, TimeSpan.Zero);

    protected abstract ICallBook Make();

    [StoreFact]
    public async Task PutAside_Several_SoonestFirstAndNoTimeBeforeAll()
    {
        await using var book = Make();
        await book.PutAsideAsync(Slip("late", Noon.AddHours(2)));
        await book.PutAsideAsync(Slip("now", null));
        await book.PutAsideAsync(Slip("soon", Noon.AddHours(1)));

        Assert.Equal(["now", "soon", "late"], (await book.WaitingAsync()).Select(slip => slip.Case));
    }

    [StoreFact]
    public async Task PutAside_Again_TakesThePlaceOfTheSlip_TakeUpKeepsNotes()
    {
        await using var book = Make();
        await book.PutAsideAsync(Slip("a", null));
        await book.PutAsideAsync(Slip("a", Noon));
        await book.NoteAsync("a", new CallNote(Noon, "Anna", "has no ladder"));
        Assert.Equal(Slip("a", Noon), Assert.Single(await book.WaitingAsync()));

        await book.TakeUpAsync("a");

        Assert.Empty(await book.WaitingAsync());
        Assert.Equal("has no ladder", Assert.Single(await book.NotesAsync("a")).Text);
        Assert.Empty(await book.NotesAsync("b"));
    }

    [StoreTheory]
    [InlineData("ingrid", "a")]
    [InlineData("5550142", "a")]
    [InlineData("(555) 01-42", "a")]
    [InlineData("LADDER", "b")]
    [InlineData("142", "a")]
    [InlineData("12345", "")]
    [InlineData("Ottery", "")]
    public async Task Find_NameNumberOrWord_FindsTheCase(string about, string found)
    {
        await using var book = Make();
        await book.PutAsideAsync(Slip("a", Noon));
        await book.NoteAsync("b", new CallNote(Noon, "Anna", "has no ladder"));

        Assert.Equal(found, string.Join(' ', await book.FindAsync(about)));
    }

    [StoreFact]
    public async Task Blank_CaseOrTime_LeavesNoWordsOfIt()
    {
        await using var book = Make();
        foreach (string id in new[] { "a", "b" })
        {
            await book.PutAsideAsync(Slip(id, null));
            await book.NoteAsync(id, new CallNote(Noon, "Anna", "has no ladder"));
        }

        await book.BlankAsync("a");
        Assert.Equal("b", string.Join(' ', await book.FindAsync("ingrid")));
        Assert.Equal("[removed]", Assert.Single(await book.NotesAsync("a")).Text);
        await book.BlankAsync(Noon);
        Assert.Equal("b", string.Join(' ', await book.FindAsync("ladder")));
        await book.BlankAsync(Noon.AddSeconds(1));
        Assert.Empty(await book.FindAsync("ladder"));
        Assert.Empty(await book.FindAsync("ingrid"));
    }

    protected static CallSlip Slip(string id, DateTimeOffset? due) => new(id, "Ingrid", "555 0142", due, Noon, "Anna");
}
