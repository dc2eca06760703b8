using System.Xml.Linq;
using DxAssistant.Bot.Tests.Cases;

namespace DxAssistant.Bot.Tests.Server.Commands;

public sealed class ContentExchangeTests
{
    private static readonly string Tiny = SourceFolder.Find("tests/Knowledge.Tests/Content/Tiny");

    // There and back: pages, matrix, pages, the same matrix.
    [Fact]
    public async Task Import_ExportedMatrix_MakesPagesThatExportTheSame()
    {
        using var folder = new TemporaryFolder();
        string first = folder.File("first.csv"), pages = folder.File("pages"), second = folder.File("second.csv");
        await Run.OfAsync("", "content", "export", "matrix", Tiny, "--to", first);

        var import = await Run.OfAsync("", "content", "import", first, "--to", pages);
        var check = await Run.OfAsync("", "content", "check", pages);
        await Run.OfAsync("", "content", "export", "matrix", pages, "--to", second);

        Assert.Equal(0, import.Code);
        Assert.Equal(0, check.Code);
        Assert.Equal(File.ReadAllText(first), File.ReadAllText(second));
    }

    [Fact]
    public async Task Import_PlainTable_MakesPagesWithoutErrorsAndSaysWhatIsLeft()
    {
        using var folder = new TemporaryFolder();
        string table = folder.File("table.csv"), pages = folder.File("pages");
        File.WriteAllText(table, "fault,Lamp test,Ohm test\r\n\"Motor, burnt\",1,0\r\nPlug loose,0,1\r\n");

        var import = await Run.OfAsync("", "content", "import", table, "--to", pages);
        var check = await Run.OfAsync("", "content", "check", pages);

        Assert.Equal(0, check.Code);
        Assert.Contains("faults/motor-burnt.md: To do: say what proves it.", import.Output, StringComparison.Ordinal);
        Assert.Contains("| [Motor, burnt](../faults/motor-burnt.md) | 0.001 | 0.999 |",
            File.ReadAllText(Path.Combine(pages, "checks", "lamp-test.md")), StringComparison.Ordinal);
    }

    // As a spreadsheet saves it where the comma is the decimal mark: byte order mark, semicolons, a line break and
    // doubled quotes in fields, blanks around names, empty cells and an empty row at the end.
    [Fact]
    public async Task Import_SymptomsAgainstFaultsFromASpreadsheet_MakesTheSymptomsWithTheirCauses()
    {
        using var folder = new TemporaryFolder();
        string table = folder.File("table.csv"), pages = folder.File("pages");
        File.WriteAllText(table,
            "\uFEFF;\"Motor,\r\nburnt\";Plug loose \r\n\"Fan \"\"head\"\" stands\";0,9;often\r\nHums;;70 %\r\n;;\r\n");

        var import = await Run.OfAsync("", "content", "import", table, "--to", pages, "--table", "symptoms");
        var check = await Run.OfAsync("", "content", "check", pages);

        Assert.Equal(0, import.Code);
        Assert.Contains("No check can see these faults yet", import.Output, StringComparison.Ordinal);
        string stands = File.ReadAllText(Path.Combine(pages, "symptoms", "fan-head-stands.md"));
        Assert.Contains("(../faults/motor-burnt.md) | 0.9 |", stands, StringComparison.Ordinal);
        Assert.Contains("(../faults/plug-loose.md) | 0.7 |", stands, StringComparison.Ordinal);
        Assert.DoesNotContain("motor-burnt", File.ReadAllText(Path.Combine(pages, "symptoms", "hums.md")),
            StringComparison.Ordinal);
        Assert.All(check.Output.Split('\n').Where(line => line.Contains(": error[", StringComparison.Ordinal)),
            line => Assert.Contains(": error[unseen-fault]: ", line, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("s,a,A\nx,1,1\n", "fault A is there twice")]
    [InlineData("s,a\n x ,1\nX,1\n", "symptom X is there twice")]
    [InlineData("s,a\n,1\n", "a symptom has no name")]
    [InlineData("s,a,\nx,1,\n", "a fault has no name")]
    [InlineData("s,a,b\nx,1,\n", "fault b has no symptom")]
    [InlineData("s,a\nx,1\ny,\n", "row 3: symptom y has no fault")]
    [InlineData("s,a\nx,offen\n",
        "row 2, column a: offen is not a number from 0 to 1, nor always, never, often, seldom, sometimes, usually")]
    [InlineData("s,a\nx,170 %\n",
        "row 2, column a: 170 % is not a number from 0 to 1, nor always, never, often, seldom, sometimes, usually")]
    [InlineData("s,a\nx,\"0,9\"\n",
        "row 2, column a: 0,9 is not a number from 0 to 1, nor always, never, often, seldom, sometimes, usually")]
    [InlineData("s;a\nx;\uFFFD\n", "not all of it is UTF-8: save it as CSV in UTF-8")]
    public async Task Import_SymptomsThatAreNoTable_SaysWhereAndWhatAndWritesNothing(string text, string message)
    {
        using var folder = new TemporaryFolder();
        string table = folder.File("table.csv");
        File.WriteAllText(table, text);

        var run =
            await Run.OfAsync("", "content", "import", table, "--to", folder.File("pages"), "--table", "symptoms");

        Assert.Equal((2, $"{table}: {message}\n"), (run.Code, run.Error));
        Assert.False(Directory.Exists(folder.File("pages")));
    }

    [Fact]
    public async Task Import_TableWithManySlips_SaysAllOfThemAtOnce()
    {
        using var folder = new TemporaryFolder();
        string table = folder.File("table.csv");
        File.WriteAllText(table, "s,a,A,b\nx,offen,1,\ny,2,1,\nz,,,\n");

        var run =
            await Run.OfAsync("", "content", "import", table, "--to", folder.File("pages"), "--table", "symptoms");

        const string words = "is not a number from 0 to 1, nor always, never, often, seldom, sometimes, usually";
        Assert.Equal((2, $"""
            {table}: fault A is there twice
            {table}: row 2, column a: offen {words}
            {table}: row 3, column a: 2 {words}
            {table}: row 4: symptom z has no fault
            {table}: fault b has no symptom

            """), (run.Code, run.Error));
    }

    // Names are titles as they were written; a sign that means something in Markdown still shows as itself.
    [Fact]
    public async Task Import_NamesWithSigns_KeepThemAndNobodyIsBlamed()
    {
        using var folder = new TemporaryFolder();
        string table = folder.File("table.csv"), pages = folder.File("pages");
        File.WriteAllText(table,
            "s,\"Fühler (NTC) < 1 kΩ, 50/60 Hz\",Fuse [F1] | blown\n* Pump hums_loudly *,0.5,0.5\n");

        await Run.OfAsync("", "content", "import", table, "--to", pages, "--table", "symptoms");
        var check = await Run.OfAsync("", "content", "check", pages, "--form", "json");

        string sensor = File.ReadAllText(Path.Combine(pages, "faults", "fuhler-ntc-1-k-50-60-hz.md"));
        Assert.Contains("# Fühler (NTC) \\< 1 kΩ, 50/60 Hz\n", sensor, StringComparison.Ordinal);
        Assert.Contains("part: \"To do: name the part that failed", sensor, StringComparison.Ordinal);
        Assert.DoesNotContain("\nsite:", sensor, StringComparison.Ordinal);
        string[] rules = [.. System.Text.Json.Nodes.JsonNode.Parse(check.Output)!["found"]!.AsArray()
            .Select(found => (string)found!["rule"]!).Distinct()];
        Assert.Equal(["left-to-do", "unseen-fault"], rules.Order(StringComparer.Ordinal));
    }

    // What is there stays as it is: new pages are written beside it, lines for pages that are there are named.
    [Fact]
    public async Task Import_IntoAFolderOfPages_AddsPagesAndNamesLinesForOthers()
    {
        using var folder = new TemporaryFolder();
        string table = folder.File("table.csv"), pages = folder.File("pages");
        File.WriteAllText(table, "s,Fan motor failed,Belt torn\nFan not turning,0.9,0.8\nSqueals,,0.7\n");
        foreach (string file in Directory.EnumerateFiles(Tiny, "*", SearchOption.AllDirectories))
        {
            string copy = Path.Combine(pages, Path.GetRelativePath(Tiny, file));
            Directory.CreateDirectory(Path.GetDirectoryName(copy)!);
            File.Copy(file, copy);
        }

        string[] before = [.. Directory.EnumerateFiles(pages, "*", SearchOption.AllDirectories)
            .Order(StringComparer.Ordinal).Select(File.ReadAllText)];
        var import = await Run.OfAsync("", "content", "import", table, "--to", pages, "--table", "symptoms");

        Assert.Equal(0, import.Code);
        Assert.Contains(
            "Put on symptoms/fan-not-turning.md, under ## Causes:\n  | [Belt torn](../faults/belt-torn.md) | 0.8 |\n",
            import.Output, StringComparison.Ordinal);
        Assert.Contains("Put on index.md:\n  - [Squeals](symptoms/squeals.md)\n", import.Output,
            StringComparison.Ordinal);
        Assert.Contains("frequency: rare\n", File.ReadAllText(Path.Combine(pages, "faults", "belt-torn.md")),
            StringComparison.Ordinal);
        string[] made = ["faults/belt-torn.md", "repairs/mend-belt-torn.md", "symptoms/squeals.md"];
        foreach (string page in made) File.Delete(Path.Combine(pages, page));
        Assert.Equal(before, Directory.EnumerateFiles(pages, "*", SearchOption.AllDirectories)
            .Order(StringComparer.Ordinal).Select(File.ReadAllText));
    }

    // A quote inside a field stands for itself; CR alone ends a row; tabs part fields.
    [Theory]
    [InlineData("fault\tcheck 6\" pipe\nx\t1\n")]
    [InlineData("fault,check 6\" pipe\rx,1\r")]
    public async Task Import_OddButPlainTables_AreRead(string text)
    {
        using var folder = new TemporaryFolder();
        string table = folder.File("table.csv");
        File.WriteAllText(table, text);
        Assert.Equal(0, (await Run.OfAsync("", "content", "import", table, "--to", folder.File("pages"))).Code);
        Assert.True(File.Exists(Path.Combine(folder.File("pages"), "checks", "check-6-pipe.md")));
    }

    [Fact]
    public async Task Import_FolderThatIsThere_IsLeftAlone()
    {
        using var folder = new TemporaryFolder();
        string table = folder.File("table.csv");
        File.WriteAllText(table, "fault,a\nx,1\n");

        Assert.Equal(2, (await Run.OfAsync("", "content", "import", table, "--to", folder.Path)).Code);
        Assert.Single(Directory.GetFileSystemEntries(folder.Path));
    }

    [Theory]
    [InlineData("fault,a\n", "needs a row of heads and a row for each fault")]
    [InlineData("fault,a\nx,2\n", "row 2, column a: 2 is not a number from 0 to 1")]
    [InlineData("fault,a\nx,NaN\n", "row 2, column a: NaN is not a number from 0 to 1")]
    [InlineData("fault,a\nx,1\nx,0\n", "fault x is there twice")]
    [InlineData("fault,a,a\nx,1,1\n", "column a is there twice")]
    [InlineData("fault,a\nx,1,1\n", "row 2 has 3 fields, the heads are 2")]
    [InlineData("fault,\"a\nx,1\n", "a quote is not closed")]
    [InlineData("fault,check a outcome p,check a outcome q\nx,0.5,0.4\n",
        "row 2: the outcomes of check a do not sum to 1")]
    public async Task Import_TableThatIsNone_SaysWhereAndWhat(string text, string message)
    {
        using var folder = new TemporaryFolder();
        string table = folder.File("table.csv");
        File.WriteAllText(table, text);

        var run = await Run.OfAsync("", "content", "import", table, "--to", folder.File("pages"));

        Assert.Equal(2, run.Code);
        Assert.Equal($"{table}: {message}\n", run.Error);
    }

    [Fact]
    public async Task Export_GraphMl_HasEveryFaultAndOnlyKnownEnds()
    {
        XNamespace ml = "http://graphml.graphdrawing.org/xmlns";
        var graph = XDocument.Parse((await Run.OfAsync("", "content", "export", "graphml", Tiny)).Output).Root!.Element(
            ml + "graph")!;

        HashSet<string> nodes = [.. graph.Elements(ml + "node").Select(node => node.Attribute("id")!.Value)];
        Assert.Contains("fault.fan-motor-failed", nodes);
        Assert.All(graph.Elements(ml + "edge"), edge =>
        {
            Assert.Contains(edge.Attribute("source")!.Value, nodes);
            Assert.Contains(edge.Attribute("target")!.Value, nodes);
        });
    }

    // Source: Open-PSA Model Exchange Format 2.0d, fault tree layer: every name used is defined once.
    [Fact]
    public async Task Export_FaultTrees_DefineEveryGateAndEventOnce()
    {
        var root = XDocument.Parse((await Run.OfAsync("", "content", "export", "fault-trees", Tiny)).Output).Root!;

        Assert.Equal("opsa-mef", root.Name.LocalName);
        foreach (string kind in new[] { "gate", "basic-event" })
        {
            string[] defined = [.. root.Descendants($"define-{kind}").Select(Name)];
            Assert.Equal(defined.Length, defined.Distinct().Count());
            Assert.All(root.Descendants(kind).Select(Name), used => Assert.Contains(used, defined));
        }

        Assert.Equal(1, root.Descendants("define-basic-event")
            .Where(e => Name(e).StartsWith("fault-", StringComparison.Ordinal))
            .Sum(e => (double)e.Element("float")!.Attribute("value")!), 6);
    }

    [Fact]
    public async Task Export_Dot_QuotesEveryNameAndClosesTheGraph()
    {
        string text = (await Run.OfAsync("", "content", "export", "dot", Tiny)).Output;

        Assert.StartsWith("digraph walk {\n", text, StringComparison.Ordinal);
        Assert.Contains("\"fault fan-motor-failed\" -> \"symptom fan-not-turning\" [label=\"causes 0.98\"];", text,
            StringComparison.Ordinal);
        Assert.EndsWith("}\n", text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Export_FileThatIsThere_IsLeftAlone()
    {
        using var folder = new TemporaryFolder();
        string file = folder.File("there.csv");
        File.WriteAllText(file, "mine");

        Assert.Equal(2, (await Run.OfAsync("", "content", "export", "matrix", Tiny, "--to", file)).Code);
        Assert.Equal("mine", File.ReadAllText(file));
    }

    private static string Name(XElement element) => element.Attribute("name")!.Value;
}
