using DxAssistant.Bot.Tests.Server.Commands;

namespace DxAssistant.Bot.Tests.Server.Workbench;

/// <summary>What the rules over the plan read on a page changes walks, though the graph stays as it is.</summary>
public sealed class CompareRulesTests : IDisposable
{
    private const string Symptom = "symptoms/fan-not-turning.md", Plug = "checks/fan-plug.md", Motor =
        "faults/fan-motor-failed.md";

    private readonly TinyPages pages = new();

    public void Dispose() => pages.Dispose();

    [Fact]
    public Task FirstIn_Alone_ChangesTheWalk() =>
        Changes(
            "### alder-one, fan-not-turning: walk to fan-motor-failed\n\n| before | after |\n|---|---|\n| **fan-plug: "
                + "home** | **hum: heard** |\n",
            () =>
                pages.Change(Symptom,
                    text => text.Replace("id: fan-not-turning", "id: fan-not-turning\nfirst-in: [closed-running]")));

    [Fact]
    public Task After_Alone_ChangesTheWalk() =>
        Changes("| **fan-plug: home** | **board-supply: good** |\n",
            () =>
                pages.Change(Plug, text => text.Replace("who: technician", "who: technician\nafter: [board-supply]")));

    [Fact]
    public Task Proof_Alone_ChangesTheWalk() => Changes("| **replace-fan-motor** | **board-supply: good** |\n", Prove);

    [Fact]
    public Task NotAt_Alone_ChangesTheWalk() =>
        Changes("| fan-not-turning |",
            () =>
                pages.Change(Plug,
                    text => text.Replace("who: technician", "who: technician\nnot-at: [fan-not-turning]")));

    [Fact]
    public Task Rule_LimitAlone_ChangesTheWalk()
    {
        Prove();
        return Changes("| **board-supply: good** | **replace-fan-motor** |\n", () => Set("""
            ## Rules over the plan
            | Rule | Minutes | Share | Means | Source |
            |---|---|---|---|---|
            | proof before part | 0 | 0 | No. | [Common practice](sources.md#common-practice) |
            """));
    }

    [Fact]
    public Task Setting_Alone_ChangesTheWalk()
    {
        pages.Change(Plug, text => text.Replace("who: technician", "who: technician\nafter: [board-supply]"));
        return Changes("| **board-supply: good** | **fan-plug: home** |\n", () => Set("""
            ## Settings
            | Setting | Value | Unit | Means | Source |
            |---|---|---|---|---|
            | fault in earnest question | 0.5 | probability | Much. | [Common practice](sources.md#common-practice) |
            """));
    }

    private void Prove() =>
        pages.Change(Motor,
            text => text.Replace("It is proved.", "It is proved by [the supply](../checks/board-supply.md)."));

    private void Set(string section) => pages.Change("words.md", text => text + "\n" + section + "\n");

    private async Task Changes(string expected, Action edit)
    {
        Hear();
        string old = pages.Copy("old");
        edit();
        Run run = await Run.OfAsync("", "content", "compare", old, pages.Folder, "--walks", "20", "--work", "20000");
        Assert.Equal((0, ""), (run.Code, run.Code == 0 ? "" : run.Error));
        Assert.Contains(expected, run.Output, StringComparison.Ordinal);
    }

    // A check that can be done before anything is isolated, and tells next to nothing.
    private void Hear()
    {
        File.WriteAllText(pages.PathOf("checks/hum.md"), pages.Read(Plug)
            .Replace("id: fan-plug", "id: hum").Replace("access: [isolated-open]", "access: [closed-running]")
            .Replace("who: technician\nafter: [board-supply]", "who: technician")
            .Replace("# Indoor fan plug", "# Hum of the fan")
            .Replace("Is the fan motor plug fully home?", "Does the fan hum?")
            .Replace("| home | It is home |", "| heard | It hums |")
            .Replace("| loose | It was loose |", "| silent | It is silent |")
            .Replace("| Fault | home | loose |", "| Fault | heard | silent |")
            .Replace("never | always |", "0.4 | 0.6 |").Replace("always | never |", "0.5 | 0.5 |")
            .Replace("0.97 | 0.03 |", "0.6 | 0.4 |"));
        pages.Change("index.md", text => text.Replace("- [Fan plug]", "- [Hum](checks/hum.md), [Fan plug]"));
    }
}
