using DxAssistant.Bot.Tests.Server.Workbench;

namespace DxAssistant.Bot.Tests.Server.Commands;

public sealed class ContentMendTests : IDisposable
{
    private readonly TinyPages pages = new();

    public void Dispose() => pages.Dispose();

    [Fact]
    public async Task Mend_PageWithWindowsLineEnds_KeepsThemAndItsMark()
    {
        string right = "\uFEFF" + pages.Read("checks/fan-plug.md").Replace("\n", "\r\n");
        pages.Change("checks/fan-plug.md", _ => right.Replace("who: technician", "who: technican"));
        var (code, output, _) = await Run.OfAsync("", "content", "mend", pages.Folder);
        Assert.Equal(0, code);
        Assert.Contains("-who: technican\n+who: technician\n", output, StringComparison.Ordinal);
        Assert.Equal(right, System.Text.Encoding.UTF8.GetString(File.ReadAllBytes(pages.PathOf("checks/fan-plug.md"))));
    }

    [Fact]
    public async Task Mend_Show_WritesNothing()
    {
        pages.Change("checks/fan-plug.md", text => text.Replace("who: technician", "who: technican"));
        string before = pages.Read("checks/fan-plug.md");
        Assert.Equal(0, (await Run.OfAsync("", "content", "mend", pages.Folder, "--show")).Code);
        Assert.Equal(before, pages.Read("checks/fan-plug.md"));
    }

    [Fact]
    public async Task Mend_WhatNobodyCanGuess_IsLeftAndSaid()
    {
        pages.Change("checks/fan-plug.md", text => text.Replace("who: technician", "who: somebody"));
        string before = pages.Read("checks/fan-plug.md");
        var (code, _, error) = await Run.OfAsync("", "content", "mend", pages.Folder);
        Assert.Equal(1, code);
        Assert.Contains("0 pages changed, 1 error left", error, StringComparison.Ordinal);
        Assert.Equal(before, pages.Read("checks/fan-plug.md"));
    }

    [Fact]
    public async Task Explain_Rule_ShowsBothExamples()
    {
        var (code, output, _) = await Run.OfAsync("", "content", "explain", "broken-link");
        Assert.Equal(0, code);
        Assert.Contains("⟦../cautions/live-main.md⟧", output, StringComparison.Ordinal);
        Assert.Contains("Good, `checks/fan-plug.md`", output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Explain_UnknownRule_NamesTheNearest()
    {
        var (code, _, error) = await Run.OfAsync("", "content", "explain", "broken-links");
        Assert.Equal(2, code);
        Assert.Contains("did you mean broken-link?", error, StringComparison.Ordinal);
    }
}
