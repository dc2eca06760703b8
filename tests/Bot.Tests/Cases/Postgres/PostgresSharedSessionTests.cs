using DxAssistant.Bot.Tests.Server.Accounts;
using DxAssistant.Cases.Accounts;
using DxAssistant.Cases.Postgres;

namespace DxAssistant.Bot.Tests.Cases.Postgres;

[NeedsPostgres]
[Collection(PostgresGroup.Name)]
public sealed class PostgresSharedSessionTests(PostgresServer server) : SharedSessionTests
{
    protected override Func<AccountBook> NewBook()
    {
        string place = server.NewPlace();
        return () => PostgresAccounts.Open(place, TimeProvider.System);
    }
}
