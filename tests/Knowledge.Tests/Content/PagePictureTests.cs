using System.Xml.Linq;
using DxAssistant.Graph.Model;
using DxAssistant.Knowledge.Content;
using DxAssistant.Knowledge.Content.Model;

namespace DxAssistant.Knowledge.Tests.Content;

public class PagePictureTests
{
    private const string Path = "pictures/room-sensor.svg";
    private const string Open = "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 320 200\"><title>Plug</title>";

    [Fact]
    public void Compile_PictureUnderHow_IsPartOfTheCheckWithItsWords()
    {
        PagePicture picture = Assert.Single(PicturesOf(TinyContent.Folder));
        Assert.Equal(Path, picture.Path);
        Assert.Equal("The leads on the two pins of the plug RA", picture.Words.Text);
        Assert.Equal(("checks/room-sensor.md", "How"), (picture.Words.Place.Path, picture.Words.Place.Heading));
        Assert.Equal("img", XElement.Parse(picture.Svg).Attribute("role")?.Value);
    }

    [Fact]
    public void Compile_PictureUnderHow_AddsNothingToItsSteps()
    {
        CheckPage check = ContentCompiler.Compile(TinyContent.Folder).Library!.Checks[new CheckId("room-sensor")];
        Assert.Equal(["Unplug RA.", "Measure across its two pins."], check.How.Select(step => step.Text));
    }

    [Theory]
    [InlineData("alder-one", null)]
    [InlineData("alder-noe", "did you mean `alder-one`?")]
    public void Compile_PictureOfASeries_NamesOneThatExists(string series, string? help)
    {
        string page =
            TinyContent.Texts["checks/room-sensor.md"].Replace("room-sensor.svg)", $"room-sensor.svg \"{series}\")");
        CompileResult result = ContentCompiler.Compile(TinyContent.With("checks/room-sensor.md", page));
        Assert.Equal(help, result.Diagnostics.SingleOrDefault()?.Help);
        Assert.Equal(help is null ? 0 : series.Length, result.Diagnostics.SingleOrDefault()?.At.Length ?? 0);
        if (help is null) Assert.Equal(series, result.Library!.Checks[new CheckId("room-sensor")].Pictures[0].Series);
    }

    [Fact]
    public void Compile_IdsInAPicture_BeginWithItsName()
    {
        ContentFolder folder = TinyContent.With(Path, "<?xml version=\"1.0\"?><!-- note -->" + Open
            + "<clipPath id=\"half\"><rect x=\"0\" y=\"0\" width=\"9\" height=\"9\"/></clipPath>"
            + "<g id=\"pin\" clip-path=\"url(#half)\"><circle class=\"live probe-a\" r=\"4\"/></g>"
            + "<use href=\"#pin\" x=\"20\"/></svg>");
        string svg = Assert.Single(PicturesOf(folder)).Svg;
        Assert.StartsWith("<svg ", svg, StringComparison.Ordinal);
        Assert.Contains("id=\"room-sensor-half\"", svg, StringComparison.Ordinal);
        Assert.Contains("url(#room-sensor-half)", svg, StringComparison.Ordinal);
        Assert.Contains("href=\"#room-sensor-pin\"", svg, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("<script>go()</script>", "script-in-picture")]
    [InlineData("<foreignObject/>", "script-in-picture")]
    [InlineData("<circle r=\"4\" onload=\"go()\"/>", "script-in-picture")]
    [InlineData("<a href=\"javascript:go()\"><circle r=\"4\"/></a>", "script-in-picture", "unknown-picture-part")]
    [InlineData("<rect fill=\"url(https://x.invalid/a.svg#b)\" width=\"4\" height=\"4\"/>", "wrong-picture-reference")]
    [InlineData("<image href=\"data:image/png;base64,AA\"/>", "unknown-picture-part", "wrong-picture-reference")]
    [InlineData("<use xmlns:x=\"http://www.w3.org/1999/xlink\" x:href=\"other.svg#b\"/>", "wrong-picture-reference")]
    [InlineData("<style>*{fill:red}</style>", "unknown-picture-part")]
    [InlineData("<animate/>", "unknown-picture-part")]
    [InlineData("<b xmlns=\"http://www.w3.org/1999/xhtml\">x</b>", "unknown-picture-part")]
    [InlineData("<use href=\"#nothing\"/>", "wrong-picture-reference")]
    public void Compile_UnsafePicture_IsRefusedByName(string part, params string[] names) =>
        Assert.Equal(names, ContentCompiler.Compile(TinyContent.With(Path, Open + part + "</svg>"))
            .Diagnostics.Select(found => found.Name).Order(StringComparer.Ordinal));

    [Theory]
    [InlineData("<!DOCTYPE svg [<!ENTITY a \"aaaa\">]>")]
    [InlineData("<!DOCTYPE svg SYSTEM \"https://x.invalid/x.dtd\">")]
    public void Compile_PictureWithDocumentType_IsUnreadable(string type) => Unreadable(type + Open + "</svg>");

    [Fact]
    public void Compile_DeeplyNestedPicture_IsUnreadable() => Unreadable(Open
        + string.Concat(Enumerable.Repeat("<g>", 2_000)) + string.Concat(Enumerable.Repeat("</g>", 2_000)) + "</svg>");

    [Fact]
    public void Compile_LongPicture_IsUnreadable() => Unreadable(Open + new string(' ', 20_000) + "</svg>");

    private static void Unreadable(string svg) => Assert.Equal("unreadable-picture",
        Assert.Single(ContentCompiler.Compile(TinyContent.With(Path, svg)).Diagnostics).Name);

    private static IReadOnlyList<PagePicture> PicturesOf(ContentFolder folder) =>
        [.. ContentCompiler.Compile(folder).Library!.Checks.Values.SelectMany(check => check.Pictures)];
}
