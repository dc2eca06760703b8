using System.Text.Json;
using System.Text.Json.Nodes;
using DxAssistant.Bot.Tests.Server.Commands;
using DxAssistant.Knowledge.Content;
using DxAssistant.Server.Commands;
using DxAssistant.Server.Commands.Authoring;

namespace DxAssistant.Bot.Tests.Server.Workbench;

public sealed class SarifLogTests : IDisposable
{
    private readonly TinyPages pages = new();

    public void Dispose() => pages.Dispose();

    // Source: OASIS, SARIF 2.1.0, the whole published JSON schema (revision rtm.5; tests/Reference/README.md says from
    // where).
    [Fact]
    public void Check_PagesWithFaultsAsSarif_IsAsThePublishedSchemaSays()
    {
        JsonNode log = Sarif();
        using var schema =
            JsonDocument.Parse(File.ReadAllText(Repository.PathOf("tests", "Reference", "sarif-2.1.0-rtm.5.json")));
        Assert.Empty(
            JsonSchema.Check(JsonSerializer.SerializeToElement(log), schema.RootElement, schema.RootElement, "log"));
    }

    [Fact]
    public void JsonSchema_WrongLog_IsRefused()
    {
        JsonNode log = Sarif();
        log["runs"]![0]!["results"]![0]!["level"] = "bad";
        log["runs"]![0]!["tool"]!["driver"]!.AsObject().Remove("name");
        log["runs"]![0]!["columns"] = 1;
        using var schema =
            JsonDocument.Parse(File.ReadAllText(Repository.PathOf("tests", "Reference", "sarif-2.1.0-rtm.5.json")));
        Assert.Equal(3,
            JsonSchema.Check(JsonSerializer.SerializeToElement(log), schema.RootElement, schema.RootElement, "log")
                .Count());
    }

    [Fact]
    public void Check_SlipBehindAnEmojiAsSarif_CountsCodeUnits()
    {
        JsonNode result = Sarif()["runs"]![0]!["results"]!.AsArray()
            .Single(found => found!["ruleId"]!.ToString() == "broken-link")!;
        JsonNode region = result["locations"]![0]!["physicalLocation"]!["region"]!;
        // "- " is two code units, the family of four eleven, " [dead](" eight: the target begins at the 22nd.
        Assert.Equal(22, (int)region["startColumn"]!);
        Assert.Equal(22 + "../acess/isolated-open.md".Length, (int)region["endColumn"]!);
        Assert.Equal("../access/isolated-open.md",
            (string?)result["fixes"]![0]!["artifactChanges"]![0]!["replacements"]![0]!["insertedContent"]!["text"]);
    }

    // 3.14.14: the base of the pages counts from where the command was called, and no path of this machine is in the
    // log.
    [Fact]
    public void Check_FolderGivenByItsWholePath_IsNamedFromWhereTheCommandWasCalled()
    {
        JsonNode log = Sarif(), bases = log["runs"]![0]!["originalUriBaseIds"]!, pagesBase = bases["PAGES"]!;
        Assert.False(Uri.TryCreate((string?)pagesBase["uri"], UriKind.Absolute, out _));
        Assert.Null(bases[(string)pagesBase["uriBaseId"]!]!["uri"]);
        Assert.Equal(Path.GetFullPath(pages.Folder), Path.GetFullPath(Uri.UnescapeDataString((string)pagesBase["uri"]!))
            .TrimEnd('/'));
        Assert.DoesNotContain($"\"{pages.Folder}", log.ToJsonString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Check_EveryResult_NamesItsRuleByIdAndPlace()
    {
        JsonNode run = Sarif()["runs"]![0]!;
        Assert.All(run["results"]!.AsArray(), found => Assert.Equal((string?)found!["ruleId"],
            (string?)run["tool"]!["driver"]!["rules"]![(int)found["ruleIndex"]!]!["id"]));
    }

    [Fact]
    public void Check_AsJson_CountsAndNamesWhatIsFound()
    {
        Break();
        var output = new StringWriter { NewLine = "\n" };
        Assert.Equal(1, ContentCheck.Run(pages.Folder, output, TextWriter.Null, "json"));
        JsonNode all = JsonNode.Parse(output.ToString())!;
        Assert.Equal((2, 0), ((int)all["errors"]!, (int)all["warnings"]!));
        Assert.Equal(["broken-link", "unknown-id"], all["found"]!.AsArray().Select(found => (string?)found!["rule"]));
        Assert.Equal("technician", (string?)all["found"]![1]!["mend"]!["text"]);
    }

    private JsonNode Sarif()
    {
        Break();
        var output = new StringWriter { NewLine = "\n" };
        Assert.Equal(1, ContentCheck.Run(pages.Folder, output, TextWriter.Null, "sarif"));
        return JsonNode.Parse(output.ToString())!;
    }

    private void Break()
    {
        pages.Change("cautions/live-mains.md", text => text + "\n- 👨‍👩‍👧‍👦 [dead](../acess/isolated-open.md)\n");
        pages.Change("checks/fan-plug.md", text => text.Replace("who: technician", "who: technican"));
    }
}
