using DxAssistant.Cases.Accounts;
using DxAssistant.Cases.Sqlite;

namespace DxAssistant.Bot.Tests.Cases.Accounts;

public sealed class SqliteAccountBookTests : AccountBookTests
{
    protected override AccountBook Make() => SqliteAccounts.InMemory(Clock);
}
