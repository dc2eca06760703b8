using System.Globalization;
using System.Text.RegularExpressions;
using DxAssistant.Knowledge.Pictures;

namespace DxAssistant.Bot.Tests.Server;

/// <summary>The inks of pictures on both papers.</summary>
/// <remarks>Source: WCAG 2.2, success criteria 1.4.6 (text, 7:1) and 1.4.11 (lines and signs, 3:1), relative luminance
/// as defined there.</remarks>
public sealed class PictureInkTests
{
    private static readonly string Css =
        File.ReadAllText(Repository.PathOf("bot", "Server", "wwwroot", "css", "ink.css"));

    [Theory]
    [InlineData("ink", "paper", 7)]
    [InlineData("pale-ink", "paper", 7)]
    [InlineData("unsound", "paper", 7)]
    [InlineData("pen", "paper", 3)]
    [InlineData("sound", "paper", 3)]
    [InlineData("edge", "paper", 3)]
    [InlineData("ink", "band", 3)]
    [InlineData("pen", "band", 3)]
    [InlineData("unsound", "band", 3)]
    [InlineData("edge", "band", 3)]
    [InlineData("lit", "glass", 7)]
    public void Contrast_OfInkOnGround_IsEnoughOnBothPapers(string ink, string ground, double least)
    {
        foreach (string theme in new[] { ":root {", ":root[data-shade=\"dark\"] {" })
        {
            double contrast = Contrast(Colour(theme, ink), Colour(theme, ground));
            Assert.True(contrast >= least, $"{ink} on {ground} in {theme} is {contrast:0.00}:1");
        }
    }

    [Fact]
    public void PictureFile_BringsTheInksOfThePage()
    {
        string file = PictureFile.Of("<svg><g/></svg>");
        string[] themes = [":root {", ":root[data-shade=\"dark\"] {"];
        string[] styles = [file[..file.IndexOf("@media", StringComparison.Ordinal)],
            file[file.IndexOf("@media", StringComparison.Ordinal)..]];
        for (int i = 0; i < themes.Length; i++)
        {
            MatchCollection inks = Regex.Matches(styles[i], "--([a-z-]+):(#[0-9a-f]{6})");
            Assert.Equal(12, inks.Count);
            Assert.All(inks, ink => Assert.Equal(Block(themes[i], ink.Groups[1].Value), ink.Groups[2].Value));
        }
    }

    private static double Contrast(double[] one, double[] other)
    {
        double[] sorted = [.. new[] { Luminance(one), Luminance(other) }.Order()];
        return (sorted[1] + 0.05) / (sorted[0] + 0.05);
    }

    private static double Luminance(double[] rgb)
    {
        double[] linear = [.. rgb.Select(c => c <= 0.04045 ? c / 12.92 : Math.Pow((c + 0.055) / 1.055, 2.4))];
        return 0.2126 * linear[0] + 0.7152 * linear[1] + 0.0722 * linear[2];
    }

    private static double[] Colour(string theme, string name) => [.. Enumerable.Range(0, 3).Select(i =>
        int.Parse(Block(theme, name).AsSpan(1 + 2 * i, 2), NumberStyles.HexNumber, CultureInfo.InvariantCulture)
            / 255.0)];

    private static string Block(string theme, string name)
    {
        string block = Css[Css.IndexOf(theme, StringComparison.Ordinal)..];
        Match found =
            Regex.Match(block[..block.IndexOf('}', StringComparison.Ordinal)], $@"--{name}: (#[0-9a-f]{{6}});");
        Assert.True(found.Success, $"{theme} has no colour {name}");
        return found.Groups[1].Value;
    }
}
