using System.Text.RegularExpressions;
using DxAssistant.Bot.Tests.Server;
using DxAssistant.Bot.Tests.Server.Workbench;
using Microsoft.AspNetCore.Routing;

namespace DxAssistant.Bot.Tests.Fuzzing;

/// <summary>Whatever body comes to any address that takes one.</summary>
internal sealed partial class BodyFuzz() : AddressFuzz("bodies", 600)
{
    // Makes the program ask everybody who they are.
    private const string Accounts = "POST /api/accounts";

    private static readonly string[] Bodies =
    [
        """{"turnId":"t1","text":"fan dead","question":"q1"}""",
        """{"turnId":"t2","answer":{"question":"q1","choice":"yes"}}""",
        """{"turnId":"t3","answer":{"readings":{"U–V":"1.2 Ω","V–W":1.2}}}""",
        """{"turnId":"t4","answer":{"command":"back"}}""",
        """{"turnId":"j1","unit":{"unit":1,"series":"alder-one","model":"m","serial":"AO240715","installed":"2024-05-06","site":"roof"}}""",
        """{"turnId":"j2","person":{"person":null,"part":"customer","name":"Ann","phone":"555 0100"}}""",
        """{"turnId":"j3","note":"n"}""", """{"turnId":"j4","visit":"begin"}""",
        """{"caller":"Ann","phone":"555 0100","due":"2029-06-01T08:00:00Z"}""", """{"text":"note"}""",
        """{"code":"acorn amber anchor apple"}""",
        """{"act":"unit","after":1,"why":"w","unit":{"model":"m","serial":"s","site":"x","installed":"2029-06-01"}}""",
        """{"label":"erp","scopes":["read-cases"]}""",
        """{"pages":[{"path":"index.md","text":"# x","base":"1"}],"show":"index.md","note":"n","walk":{"series":"alder-one","symptom":"fan-not-turning","seen":[{"check":"a","outcome":"b"}]}}""",
        """{"before":"a\nb","after":"a\nc","mine":"a\nd","theirs":"b"}""",
        """{"name":"ada","password":"eleven blue kettles"}""",
        """{"basis":0,"turns":[{"turnId":"open","events":[{"event":"opened","content":"v"},{"event":"said","turnId":"open","by":"technician","body":{"form":"opening"}}]}]}""",
    ];

    private readonly TinyPages files = new();

    protected override Task<RunningServer> StartAsync() =>
        RunningServer.StartWithoutPaceAsync(files.Folder, files.PathOf("../proposals"));

    protected override async Task<IEnumerable<string>> FirstAsync()
    {
        string id = await Server.OpenCaseAsync();
        string[] addresses =
            [.. Server.Endpoints.SelectMany(route => Addresses(route, id)).Order(StringComparer.Ordinal)];
        Assert.True(addresses.Length >= 15, string.Join('\n', addresses));
        return addresses.SelectMany(address => Bodies.Select(body => $"{address}\n{body}"));
    }

    public override async ValueTask DisposeAsync()
    {
        await base.DisposeAsync();
        files.Dispose();
    }

    private static IEnumerable<string> Addresses(RouteEndpoint route, string id) =>
        from method in route.Metadata.GetMetadata<HttpMethodMetadata>()?.HttpMethods ?? []
        where method is "POST" or "PUT" or "PATCH"
        let address = $"{method} /{Filled(route.RoutePattern.RawText!.TrimStart('/'), id)}"
        where address is not Accounts and not "POST /api/messages"
        select address;

    private static string Filled(string route, string id) =>
        Hole().Replace(route.Replace("{id}", id, StringComparison.Ordinal), "1")
            + (route.EndsWith("photos", StringComparison.Ordinal) ? "?turnId=p" : "");

    [GeneratedRegex("{[^}]*}")]
    private static partial Regex Hole();
}
