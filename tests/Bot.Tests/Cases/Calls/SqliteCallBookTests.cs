using DxAssistant.Cases.Calls;

namespace DxAssistant.Bot.Tests.Cases.Calls;

public sealed class SqliteCallBookTests : CallBookTests
{
    protected override ICallBook Make() => SqlCallBook.InMemory();

    [Fact]
    public async Task File_ClosedAndOpened_KeepsTheSlip()
    {
        using var folder = new TemporaryFolder();
        await using (var book = SqlCallBook.Open(folder.File("cases.db"))) await book.PutAsideAsync(Slip("a", Noon));
        await using var again = SqlCallBook.Open(folder.File("cases.db"));
        Assert.Equal(Slip("a", Noon), Assert.Single(await again.WaitingAsync()));
    }
}
