using DxAssistant.Bot.Tests.Cases.Accounts;
using DxAssistant.Cases.Accounts;
using DxAssistant.Cases.Postgres;

namespace DxAssistant.Bot.Tests.Cases.Postgres;

[NeedsPostgres]
[Collection(PostgresGroup.Name)]
public sealed class PostgresAccountBookTests(PostgresServer server) : AccountBookTests
{
    protected override AccountBook Make() => PostgresAccounts.Open(server.NewPlace(), Clock);
}
