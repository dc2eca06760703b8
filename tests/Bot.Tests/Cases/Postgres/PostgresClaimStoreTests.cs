using DxAssistant.Bot.Tests.Cases.Claims;
using DxAssistant.Cases.Claims;
using Npgsql;

namespace DxAssistant.Bot.Tests.Cases.Postgres;

[NeedsPostgres]
[Collection(PostgresGroup.Name)]
public sealed class PostgresClaimStoreTests(PostgresServer server) : ClaimStoreTests
{
    protected override IClaimStore Make() => SqlClaimStore.Open(new NpgsqlConnection(server.NewPlace()));
}
