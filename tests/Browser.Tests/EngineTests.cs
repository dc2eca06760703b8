using System.Collections.Immutable;
using System.Diagnostics;
using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;
using DxAssistant.Conversation;
using DxAssistant.Conversation.Messages;
using DxAssistant.Conversation.Sheets;
using Microsoft.Playwright;
using Xunit.Abstractions;

namespace DxAssistant.Browser.Tests;

/// <summary>The core in the browser says what the core on the server says, byte for byte.</summary>
/// <remarks><c>DX_WALKS=483</c> takes so many generated conversations besides the recorded ones.</remarks>
public sealed class EngineTests(ITestOutputHelper output)
{
    private const int Seed = 20261125;
    private const int Turns = 16;

    private static readonly int Walks =
        int.Parse(Environment.GetEnvironmentVariable("DX_WALKS") ?? "5", CultureInfo.InvariantCulture);

    [ChromiumFact]
    public async Task Conversations_RecordedAndGenerated_SameBytesInTheBrowser()
    {
        var assistant = new Assistant(Shipped.Pages.Library!);
        await using var site = await Site.StartAsync(() => Shipped.Pages);
        await using var visit = await Visit.StartAsync();
        await visit.OpenAsync(site.Address);

        Assert.Equal(assistant.Library.Version, await StartAsync(visit.Page));

        int turns = 0;
        var all = Conversations.Recorded().Concat(Conversations.Generated(assistant, Seed, Walks, Turns)).ToList();
        foreach (var (name, said) in all)
        {
            ImmutableArray<JsonObject> messages = [.. said.Select((body, i) => PageMessage.Of($"{i}", body))];
            string[] there = await TakeAsync(visit.Page, messages);
            string[] here = Take(assistant, Shipped.Pages.Titles, messages);
            for (int i = 0; i < here.Length; i++)
                if (here[i] != there[i]) Assert.Fail($"{name}, turn {i}:\n{here[i]}\n{there[i]}");
            turns += here.Length;
        }

        output.WriteLine($"{all.Count} conversations, {turns} turns, all equal");
        Assert.Empty(visit.Errors);
    }

    private static Task<string> StartAsync(IPage page) => page.EvaluateAsync<string>(
        """
        async () => {
          const { Engine } = await import('/js/offline/engine.js');
          const kit = await (await fetch('/offline/kit')).json();
          const pack = await (await fetch(`${kit.pack.root}pack`)).arrayBuffer();
          window.engine = new Engine();
          return window.engine.start(kit.engine.root, pack);
        }
        """);

    private static Task<string[]> TakeAsync(IPage page, IEnumerable<JsonObject> messages) =>
        page.EvaluateAsync<string[]>(
        """
        async messages => {
          await window.engine.begin('[]');
          const replies = [];
          for (const message of messages) replies.push(await window.engine.takeText(JSON.parse(message)));
          return replies;
        }
        """,
        messages.Select(message => message.ToJsonString()).ToArray());

    private static string[] Take(Assistant assistant, TitleBook titles, IEnumerable<JsonObject> messages)
    {
        var away = new AwayCase(assistant, titles, []);
        return [.. messages.Select(message => away.Take(AwayMessage.Read(JsonSerializer.SerializeToElement(message))))
            .Select(turn => JsonSerializer.Serialize(turn, ConversationJson.Default.AwayTurn))];
    }
}
