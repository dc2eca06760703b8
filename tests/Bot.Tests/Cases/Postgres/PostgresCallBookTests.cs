using DxAssistant.Bot.Tests.Cases.Calls;
using DxAssistant.Cases.Calls;
using Npgsql;

namespace DxAssistant.Bot.Tests.Cases.Postgres;

[NeedsPostgres]
[Collection(PostgresGroup.Name)]
public sealed class PostgresCallBookTests(PostgresServer server) : CallBookTests
{
    protected override ICallBook Make() => SqlCallBook.Open(new NpgsqlConnection(server.NewPlace()));
}
