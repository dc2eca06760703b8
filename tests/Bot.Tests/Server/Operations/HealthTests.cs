using System.Net;
using DxAssistant.Bot.Tests.Cases;
using DxAssistant.Cases.Sqlite;
using DxAssistant.Server.Operations;
using Microsoft.Data.Sqlite;

namespace DxAssistant.Bot.Tests.Server.Operations;

/// <summary>A supervisor hears the truth.</summary>
public sealed class HealthTests
{
    [Theory]
    [InlineData(Health.Running)]
    [InlineData(Health.Ready)]
    public async Task Get_ServerRuns_Answers200(string path)
    {
        await using var server = await RunningServer.StartAsync();

        using var response = await server.Http.GetAsync(path);

        Assert.Equal(HttpStatusCode.OK, response.StatusCode);
    }

    [Fact]
    public async Task Ready_CasesCannotBeRead_Answers503WhileStillRunning()
    {
        using var folder = new TemporaryFolder();
        string file = folder.File("cases.db");
        await using var server = await RunningServer.StartAsync(
            SqliteCaseStore.Open(file, TimeProvider.System), new EchoResponder());
        await SpoilAsync(file);

        using var ready = await server.Http.GetAsync(Health.Ready);
        using var running = await server.Http.GetAsync(Health.Running);

        Assert.Equal(HttpStatusCode.ServiceUnavailable, ready.StatusCode);
        Assert.Equal(HttpStatusCode.OK, running.StatusCode);
    }

    private static async Task SpoilAsync(string file)
    {
        await using var connection = new SqliteConnection($"Data Source={file};Pooling=False");
        await connection.OpenAsync();
        await using var command = connection.CreateCommand();
        command.CommandText = "DROP TABLE job";
        await command.ExecuteNonQueryAsync();
    }
}
