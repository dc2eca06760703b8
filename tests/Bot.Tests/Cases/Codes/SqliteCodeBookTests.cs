using DxAssistant.Cases.Codes;

namespace DxAssistant.Bot.Tests.Cases.Codes;

public sealed class SqliteCodeBookTests : CodeBookTests, IDisposable
{
    private readonly TemporaryFolder folder = new();

    protected override (CodeBook One, CodeBook Other) Make() =>
        (CodeBook.Open(folder.File("cases.db")), CodeBook.Open(folder.File("cases.db")));

    public void Dispose() => folder.Dispose();
}
