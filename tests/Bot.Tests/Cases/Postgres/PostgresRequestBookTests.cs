using DxAssistant.Bot.Tests.Cases.Requests;
using DxAssistant.Cases.Requests;
using Npgsql;

namespace DxAssistant.Bot.Tests.Cases.Postgres;

[NeedsPostgres]
[Collection(PostgresGroup.Name)]
public sealed class PostgresRequestBookTests(PostgresServer server) : RequestBookTests
{
    protected override RequestBook Make() => RequestBook.Open(new NpgsqlConnection(server.NewPlace()));
}
