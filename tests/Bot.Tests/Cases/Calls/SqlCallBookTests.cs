using DxAssistant.Cases.Calls;

namespace DxAssistant.Bot.Tests.Cases.Calls;

/// <summary>Calls that were put aside wait in the order in which they are due.</summary>
public sealed class SqlCallBookTests
{
    private static readonly DateTimeOffset Noon = new(2030, 5, 6, 12, 0, 0, TimeSpan.Zero);

    [Fact]
    public async Task PutAside_Several_SoonestFirstAndNoTimeBeforeAll()
    {
        await using var book = SqlCallBook.InMemory();
        await book.PutAsideAsync(Slip("late", Noon.AddHours(2)));
        await book.PutAsideAsync(Slip("now", null));
        await book.PutAsideAsync(Slip("soon", Noon.AddHours(1)));

        Assert.Equal(["now", "soon", "late"], (await book.WaitingAsync()).Select(slip => slip.Case));
    }

    [Fact]
    public async Task PutAside_Again_TakesThePlaceOfTheSlip_TakeUpKeepsNotes()
    {
        await using var book = SqlCallBook.InMemory();
        await book.PutAsideAsync(Slip("a", null));
        await book.PutAsideAsync(Slip("a", Noon));
        await book.NoteAsync("a", new CallNote(Noon, "Anna", "has no ladder"));
        Assert.Equal(Slip("a", Noon), Assert.Single(await book.WaitingAsync()));

        await book.TakeUpAsync("a");

        Assert.Empty(await book.WaitingAsync());
        Assert.Equal("has no ladder", Assert.Single(await book.NotesAsync("a")).Text);
        Assert.Empty(await book.NotesAsync("b"));
    }

    [Fact]
    public async Task File_ClosedAndOpened_KeepsTheSlip()
    {
        using var folder = new TemporaryFolder();
        await using (var book = SqlCallBook.Open(folder.File("cases.db"))) await book.PutAsideAsync(Slip("a", Noon));
        await using var again = SqlCallBook.Open(folder.File("cases.db"));
        Assert.Equal(Slip("a", Noon), Assert.Single(await again.WaitingAsync()));
    }

    private static CallSlip Slip(string id, DateTimeOffset? due) => new(id, "Ingrid", "555 0142", due, Noon, "Anna");
}
