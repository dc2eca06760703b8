namespace DxAssistant.Bot.Tests.Cases.Postgres;

/// <summary>The tests that share one PostgreSQL server.</summary>
[CollectionDefinition(Name)]
public sealed class PostgresGroup : ICollectionFixture<PostgresServer>
{
    public const string Name = "PostgreSQL";
}
