using System.Net.Http.Json;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace DxAssistant.Browser.Tests;

/// <summary>
/// The types of the pages' scripts, as the TypeScript compiler sees them. <c>tests/Pages/told.d.ts</c> says what the
/// server tells; it is held to what the server really sends.
/// </summary>
public sealed class TypeTests
{
    private const int Turns = 14;

    [PageToolFact]
    public async Task Scripts_OfThePages_HaveNoTypeErrors() => await HoldsAsync(".");

    // Not strictly, yet: what may be missing and what has no type is not found there.
    [PageToolFact]
    public async Task Scripts_OfThePagesForAuthors_HaveNoTypeErrors() => await HoldsAsync("writing");

    [PageToolFact]
    public async Task Script_OfTheServiceWorker_HasNoTypeErrors() => await HoldsAsync("worker");

    [PageToolFact]
    public async Task Answers_OfTheServer_AreAsTheTypesSay()
    {
        await using var site = await Site.StartAsync(() => Shipped.Pages);
        using var http = new HttpClient { BaseAddress = new Uri(site.Address) };
        string id = (await PostAsync(http, "/api/cases", new { }))["id"]!.GetValue<string>();
        var taken = new List<string>();
        var next = await TakeAsync(http, id,
            new { turnId = "0", text = "brenholt wall unit shows b4, room sensor 2.1k at 24C, im the technician" },
            taken);
        for (int turn = 1; turn < Turns && next?["kind"]?.GetValue<string>() is not (null or "closed"); turn++)
            next = await TakeAsync(http, id,
                Answer(next, turn.ToString(System.Globalization.CultureInfo.InvariantCulture)), taken);
        string whole = await http.GetStringAsync($"/api/cases/{id}");

        Assert.Contains("\"verdict\":{", whole, StringComparison.Ordinal);
        Assert.Contains("\"pictures\":[", whole, StringComparison.Ordinal);
        var (exit, said) = await CheckAsync(
            [$"const whole: Told.Case = {whole};", .. taken.Select((t, i) => $"const taken{i}: Told.Taken = {t};")]);
        Assert.True(exit == 0, said);
    }

    [PageToolFact]
    public async Task Answer_WithAFieldOfAnotherType_IsFound()
    {
        var (exit, said) = await CheckAsync(
            ["const reply: Told.Reply = { segments: 'none', belief: [] };", "const head: Told.Head = { unti: '' };"]);

        Assert.NotEqual(0, exit);
        Assert.Contains("told.ts(1,", said, StringComparison.Ordinal);
        Assert.Contains("told.ts(2,", said, StringComparison.Ordinal);
    }

    private static async Task HoldsAsync(string project)
    {
        var (exit, said) = await PageTools.CheckTypesAsync(project);
        Assert.True(exit == 0, said);
    }

    private static async Task<(int Exit, string Said)> CheckAsync(IEnumerable<string> lines)
    {
        string folder = Directory.CreateTempSubdirectory("told").FullName;
        try
        {
            await File.WriteAllLinesAsync(Path.Combine(folder, "told.ts"), [.. lines, "export {};"]);
            await File.WriteAllTextAsync(Path.Combine(folder, "tsconfig.json"),
                JsonSerializer.Serialize(new Dictionary<string, object>
            {
                ["extends"] = Path.Combine(PageTools.Folder, "tsconfig.json"),
                ["include"] = new[] { "told.ts", Path.Combine(PageTools.Folder, "told.d.ts") },
                ["exclude"] = Array.Empty<string>(),
            }));
            return await PageTools.CheckTypesAsync(folder);
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    // The first answer of each question; where readings are asked for, figures that make a verdict.
    private static object Answer(JsonNode question, string turnId)
    {
        string asked = question["id"]!.GetValue<string>();
        var fields = question["fields"]!.AsArray();
        return fields.Count > 0
            ? new { turnId,
                answer = new { question = asked,
                    readings = fields.ToDictionary(field => field!["label"]!.GetValue<string>(), _ => "24") } }
            : new { turnId,
                answer = new { question = asked, choice = question["options"]![0]!["key"]!.GetValue<string>() } };
    }

    private static async Task<JsonNode?> TakeAsync(HttpClient http, string id, object turn, List<string> taken)
    {
        var answer = await PostAsync(http, $"/api/cases/{id}/turns", turn);
        taken.Add(answer.ToJsonString());
        return answer["turn"]!["reply"]!["question"];
    }

    private static async Task<JsonNode> PostAsync(HttpClient http, string address, object body)
    {
        using var response = await http.PostAsJsonAsync(address, body);
        string text = await response.Content.ReadAsStringAsync();
        Assert.True(response.IsSuccessStatusCode, text);
        return JsonNode.Parse(text)!;
    }
}
