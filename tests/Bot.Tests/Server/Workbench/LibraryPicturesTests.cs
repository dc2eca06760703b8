using System.Collections.Concurrent;
using System.Globalization;
using System.Xml.Linq;
using DxAssistant.Bot.Tests.Conversation;
using DxAssistant.Bot.Tests.Server.Commands;
using DxAssistant.Graph.Model;
using DxAssistant.Knowledge.Content;
using DxAssistant.Knowledge.Content.Model;
using DxAssistant.Knowledge.Pictures.Plans;
using DxAssistant.Server.Content;
using DxAssistant.Server.Workbench.Drawing;

namespace DxAssistant.Bot.Tests.Server.Workbench;

public sealed class LibraryPicturesTests
{
    // Little planning: what fits a page does not hang on how good the plan is.
    private const int LittleWork = 1_000;

    private static readonly XNamespace Svg = "http://www.w3.org/2000/svg";
    private static Library Shipped => ShippedContent.Library;

    private static readonly ConcurrentDictionary<(string Kind, string? Series, string? Symptom), Planned> Drawn = new();

    private static readonly ConcurrentDictionary<SymptomId, string[]> Showing = new();

    public static TheoryData<string> Series => [.. Shipped.Series.Keys];

    [Theory]
    [MemberData(nameof(Series))]
    public void Walk_SymptomsOfTheSeries_FitsItsPageWithoutBoxOverBoxOrWordOverWord(string series)
    {
        foreach (SymptomPage symptom in Shown(series))
        {
            XElement svg = XElement.Parse(Draw(LibraryPictures.Walk, series, symptom.Id.Value).Svg);
            Assert.Equal("0 0 760 1108", (string?)svg.Attribute("viewBox"));
            PictureRoom[] boxes = [.. svg.Elements(Svg + "a").Where(way => way.Elements(Svg + "rect").Any())
                .Select(way => PictureRoom.Of(way.Elements(Svg + "rect").First()))];
            Assert.NotEmpty(boxes);
            PictureRoom.AssertApart(boxes);
            PictureRoom.AssertApart([.. svg.Descendants(Svg + "text").Select(PictureRoom.OfText)]);
            Assert.All(svg.Descendants(Svg + "text").Select(PictureRoom.OfText),
                text => Assert.True(text.Right <= 761 && text.Bottom <= 1109, $"{symptom.Id}: {text}"));
        }
    }

    [Theory]
    [MemberData(nameof(Series))]
    public void Walk_SymptomsOfTheSeries_EachNumberIsABoxAndEachBoxIsCameTo(string series)
    {
        foreach (SymptomPage symptom in Shown(series))
        {
            XElement svg = XElement.Parse(Draw(LibraryPictures.Walk, series, symptom.Id.Value).Svg);
            int boxes = svg.Descendants(Svg + "rect").Count(rect => (string?)rect.Attribute("fill") == "var(--paper)");
            string[] goes = [.. svg.Descendants(Svg + "text").Select(text => text.Value)
                .Where(text => text.StartsWith("→ ", StringComparison.Ordinal)
                    || text.StartsWith("↓ ", StringComparison.Ordinal))];
            Assert.Equal(Enumerable.Range(2, boxes - 1),
                goes.Select(go => int.Parse(go[2..], CultureInfo.InvariantCulture)).Order());
        }
    }

    [Theory]
    [InlineData("brenholt-ws", "room-sensor-code", 4)]
    [InlineData("veldarn-nord", "no-display", 6)]
    public void Walk_LimitedToSomeChecks_HasNoMoreAndSaysSo(string series, string symptom, int checks)
    {
        Planned drawn =
            LibraryPictures.Of(Shipped, new PictureAsked(LibraryPictures.Walk, series, symptom, checks), LittleWork);
        int written = XElement.Parse(drawn.Svg).Elements(Svg + "a")
            .Count(way => ((string)way.Attribute("href")!).StartsWith("#checks/", StringComparison.Ordinal));
        Assert.InRange(written, 1, checks);
        Assert.Contains(drawn.Lines, line => line.Text.Contains($"{checks} checks", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("walk")]
    [InlineData("symptom")]
    [InlineData("coverage")]
    public void Of_SamePages_GivesTheSameBytesInAnyCulture(string kind)
    {
        string first = Draw(kind, "brenholt-ws", "no-display").Svg;
        CultureInfo before = CultureInfo.CurrentCulture;
        try
        {
            CultureInfo.CurrentCulture = WithCommas();
            Assert.Equal(first, Fresh(kind, "brenholt-ws", "no-display").Svg);
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Theory]
    [InlineData("walk")]
    [InlineData("symptom")]
    [InlineData("coverage")]
    public void Of_EachPicture_LeadsToPagesThatAreThereAndSaysTheSameInWords(string kind)
    {
        ContentFolder folder = ContentFolderReader.Read(Server.Shipped.Folder);
        Planned drawn = Draw(kind, "brenholt-ws", "no-display");
        XElement svg = XElement.Parse(drawn.Svg);
        string[] targets = [.. svg.Descendants(Svg + "a").Select(way => ((string)way.Attribute("href")!)[1..])];
        Assert.NotEmpty(targets);
        Assert.All(targets, target => Assert.NotNull(folder.File(target)));
        Assert.NotEmpty((string)svg.Element(Svg + "title")!);
        Assert.NotEmpty((string)svg.Element(Svg + "desc")!);
        string said = string.Join('\n', drawn.Lines.Select(line => line.Text));
        Assert.DoesNotContain('{', said + drawn.Svg);
        if (kind != LibraryPictures.Coverage)
            Assert.All(svg.Descendants(Svg + "a").Skip(1)
                .Select(Title), name => Assert.Contains(name, said, StringComparison.Ordinal));
    }

    // Of a walk the bold lines without the state and the ways on; of a graph all lines.
    private static string Title(XElement way) => string.Join(' ', way.Elements(Svg + "text")
        .Where(text => way.Elements(Svg + "text").All(each => each.Attribute("font-weight") is null)
            || (text.Attribute("font-weight") is not null && (string?)text.Attribute("class") == "ink"
                && text.Attribute("text-anchor") is null))
        .Select(text => text.Attribute("font-weight") is null ? text.Value.Trim() : text.Value.Trim()
            .TrimStart("0123456789 ".ToCharArray())));

    [Theory]
    [MemberData(nameof(Series))]
    public void Symptom_SomeOfTheSeries_HasEachFaultCheckAndRepairApart(string series)
    {
        foreach (SymptomPage symptom in Shown(series).Take(4))
        {
            XElement svg = XElement.Parse(Draw(LibraryPictures.Symptom, series, symptom.Id.Value).Svg);
            PictureRoom.AssertApart(
                [.. svg.Elements(Svg + "a").Select(way => PictureRoom.Of(way.Elements(Svg + "rect").First()))]);
            PictureRoom.AssertApart([.. svg.Descendants(Svg + "text").Select(PictureRoom.OfText)]);
            string[] pages = [.. svg.Elements(Svg + "a").Select(way => (string)way.Attribute("href")!)];
            foreach (FaultPage fault in Shipped.Faults.Values.Where(
                fault => CoverageTable.IsFor(fault.Series, Shipped.Series[series])
                && Shipped.Graph.Find(symptom.Id)!.Causes.ContainsKey(fault.Id)))
                Assert.Contains($"#{fault.Title.Place.Path}", pages);
        }
    }

    [Theory]
    [InlineData(null)]
    [InlineData("ostvik-lc")]
    public void Coverage_AllOrOneSeries_HasEachFaultEachSymptomAndNoWordOverWord(string? series)
    {
        XElement svg = XElement.Parse(Draw(LibraryPictures.Coverage, series, null).Svg);
        PictureRoom.AssertApart([.. svg.Descendants(Svg + "text").Select(PictureRoom.OfText)]);
        string[] pages = [.. svg.Descendants(Svg + "a").Select(way => (string)way.Attribute("href")!)];
        if (series is null)
            Assert.Equal(Shipped.Faults.Count - 1,
                pages.Count(page => page.StartsWith("#faults/", StringComparison.Ordinal)));
        Assert.Contains("#series/ostvik-lc.md", pages);
        Assert.All(svg.Descendants(Svg + "g"), mark => Assert.NotEmpty((string)mark.Element(Svg + "title")!));
    }

    [Fact]
    public void Walk_InSpanish_TakesTheWordsOfItsPages()
    {
        Planned drawn = LibraryPictures.Of(Shipped,
            new PictureAsked(LibraryPictures.Walk, "brenholt-ws", "room-sensor-code", Language: "es"), LittleWork);
        Assert.Contains("reparación (línea doble)", drawn.Svg, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Command_UnknownSeries_RefusesAndNamesThem()
    {
        Run run = await Run.OfAsync("", "content", "picture", "walk", Server.Shipped.Folder, "--series", "nowhere",
            "--symptom", "no-display");
        Assert.Equal(2, run.Code);
        Assert.Contains("brenholt-ws", run.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("symptom", "a symptom is drawn for one series: add --series with one of brenholt-ws,")]
    [InlineData("walk", "a walk is drawn for one series: add --series with one of brenholt-ws,")]
    [InlineData("symptom --series brenholt-ws", "a symptom is drawn for one symptom: add --symptom with one of ")]
    public async Task Command_WithoutWhatItNeeds_SaysWhatToAdd(string asked, string remedy)
    {
        Run run = await Run.OfAsync("",
            ["content", "picture", .. asked.Split(' ').Take(1), Server.Shipped.Folder, .. asked.Split(' ').Skip(1)]);
        Assert.Equal(2, run.Code);
        Assert.StartsWith(remedy, run.Error, StringComparison.Ordinal);
    }

    // Tiny has one series: there is nothing to choose.
    [Fact]
    public async Task Command_OneSeriesOnly_NeedNotBeNamed()
    {
        using var tiny = new TinyPages();
        File.Copy(Path.Combine(Server.Shipped.Folder, "phrases.md"), tiny.PathOf("phrases.md"), overwrite: true);
        Run run = await Run.OfAsync("", "content", "picture", "symptom", tiny.Folder, "--symptom", "fan-not-turning");
        Assert.Equal((0, ""), (run.Code, run.Error));
        Assert.Contains("<svg", run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Command_ToAFile_LinksLeadFromItToThePagesAndItIsNeverOverwritten()
    {
        string folder = Directory.CreateTempSubdirectory("pictures").FullName;
        try
        {
            string file = Path.Combine(folder, "deep", "symptom.svg");
            string[] call = ["content", "picture", "symptom", Server.Shipped.Folder, "--series", "brenholt-ws",
                "--symptom", "no-display", "--to", file];
            Assert.Equal(0, (await Run.OfAsync("", call)).Code);
            foreach (XElement way in XDocument.Load(file).Descendants(Svg + "a"))
                Assert.True(
                    File.Exists(Path.Combine(folder, "deep", Uri.UnescapeDataString((string)way.Attribute("href")!))),
                    (string)way.Attribute("href")!);
            Assert.Equal(2, (await Run.OfAsync("", call)).Code);
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    private static CultureInfo WithCommas()
    {
        var culture = (CultureInfo)CultureInfo.InvariantCulture.Clone();
        (culture.NumberFormat.NumberDecimalSeparator, culture.NumberFormat.NegativeSign) = (",", "~");
        return culture;
    }

    private static Planned Draw(string kind, string? series, string? symptom) =>
        Drawn.GetOrAdd((kind, series, symptom), each => Fresh(each.Kind, each.Series, each.Symptom));

    private static Planned Fresh(string kind, string? series, string? symptom) =>
        LibraryPictures.Of(Shipped, new PictureAsked(kind, series, symptom), LittleWork);

    // Each symptom on each third of the series that show it; DX_PICTURES_OF=all takes all of them.
    private static IEnumerable<SymptomPage> Shown(string series) =>
        Shipped.Symptoms.Values.Where(page => Array.IndexOf(SeriesThatShow(page.Id), series) is >= 0 and var place
            && (IsEach || place % 3 == 0));

    private static bool IsEach => Environment.GetEnvironmentVariable("DX_PICTURES_OF") == "all";

    private static string[] SeriesThatShow(SymptomId symptom) => Showing.GetOrAdd(symptom,
        id => [.. Shipped.Series.Values.Where(series => PlanProblem.Of(Shipped, series, id) is not null)
            .Select(series => series.Id)]);
}
