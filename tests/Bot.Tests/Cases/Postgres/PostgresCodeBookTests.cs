using DxAssistant.Bot.Tests.Cases.Codes;
using DxAssistant.Cases.Codes;
using Npgsql;

namespace DxAssistant.Bot.Tests.Cases.Postgres;

[NeedsPostgres]
[Collection(PostgresGroup.Name)]
public sealed class PostgresCodeBookTests(PostgresServer server) : CodeBookTests
{
    protected override (CodeBook One, CodeBook Other) Make()
    {
        string place = server.NewPlace();
        return (CodeBook.Open(new NpgsqlConnection(place)), CodeBook.Open(new NpgsqlConnection(place)));
    }
}
