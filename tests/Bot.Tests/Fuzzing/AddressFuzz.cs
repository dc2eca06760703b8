using System.Net;
using System.Text;
using DxAssistant.Bot.Tests.Server;

namespace DxAssistant.Bot.Tests.Fuzzing;

/// <summary>
/// Whatever body comes to an address, the answer is one of the program's own and never a fault of it.
/// </summary>
/// <remarks>The first line of an input is method and address, what follows is the body.</remarks>
internal abstract class AddressFuzz(string name, int few) : IFuzzPart
{
    private const int ShownOfRefusal = 90;

    public string Name => name;

    public int Few => few;

    protected RunningServer Server { get; private set; } = null!;

    public async Task<IEnumerable<string>> BeginAsync()
    {
        Server = await StartAsync();
        return await FirstAsync();
    }

    public string Change(Random random, IReadOnlyList<string> pool) => JsonChanges.Make(random, pool);

    public async Task<string> TakeAsync(string input)
    {
        string[] place = input[..input.IndexOf('\n', StringComparison.Ordinal)].Split(' ');
        using var request = new HttpRequestMessage(new HttpMethod(place[0]), place[1]);
        request.Content =
            new StringContent(input[(place[0].Length + place[1].Length + 2)..], Encoding.UTF8, "application/json");
        using var answer = await Server.Http.SendAsync(request);
        string said = await answer.Content.ReadAsStringAsync();
        Assert.True(answer.StatusCode != HttpStatusCode.InternalServerError, said);
        return $"{place[0]} {place[1]} {(int)answer.StatusCode} {(answer.IsSuccessStatusCode ? "" : said.Length > ShownOfRefusal ? said[..ShownOfRefusal] : said)}";
    }

    public virtual async ValueTask DisposeAsync()
    {
        if (Server is not null) await Server.DisposeAsync();
    }

    protected abstract Task<RunningServer> StartAsync();

    protected abstract Task<IEnumerable<string>> FirstAsync();
}
