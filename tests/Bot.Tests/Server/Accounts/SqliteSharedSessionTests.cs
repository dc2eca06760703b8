using DxAssistant.Bot.Tests.Cases;
using DxAssistant.Cases.Accounts;
using DxAssistant.Cases.Sqlite;
using Microsoft.Data.Sqlite;

namespace DxAssistant.Bot.Tests.Server.Accounts;

public sealed class SqliteSharedSessionTests : SharedSessionTests, IDisposable
{
    private readonly TemporaryFolder folder = new();
    private int books;

    protected override Func<AccountBook> NewBook()
    {
        string file = Path.Combine(folder.Path, FormattableString.Invariant($"accounts{++books}.db"));
        return () => SqliteAccounts.Open(file, TimeProvider.System);
    }

    public void Dispose()
    {
        SqliteConnection.ClearAllPools();
        folder.Dispose();
    }
}
