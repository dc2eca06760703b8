using YamlDotNet.RepresentationModel;

namespace DxAssistant.Bot.Tests.Server.Workbench;

/// <summary>The workflow that authors copy: YAML, and only commands that the program has.</summary>
public class WorkflowFileTests
{
    private static readonly string Text =
        File.ReadAllText(Repository.PathOf("knowledge", "Content", "check-pages.yml"));

    [Fact]
    public void Workflow_Parsed_RunsTheCheckAndTheComparison()
    {
        var file = new YamlStream();
        file.Load(new StringReader(Text));
        var steps = (YamlSequenceNode)file.Documents.Single().RootNode["jobs"]["pages"]["steps"];
        string[] runs = [.. steps.OfType<YamlMappingNode>().Where(step => step.Children.ContainsKey("run"))
            .Select(step => step["run"].ToString())];
        Assert.Contains(runs, run => run.EndsWith("content check content", StringComparison.Ordinal));
        Assert.Contains(runs,
            run => run.Contains("content compare \"origin/$GITHUB_BASE_REF\" HEAD --longer 5",
                StringComparison.Ordinal));
        Assert.Equal("0", steps[0]["with"]["fetch-depth"].ToString());
    }

    [Fact]
    public async Task Workflow_EachOption_IsOneThatTheProgramKnows()
    {
        string help = (await Commands.Run.OfAsync("", "content", "compare", "--help")).Output
            + (await Commands.Run.OfAsync("", "content", "check", "--help")).Output;
        string[] options = [.. Text.Split(' ', '\n').Where(word => word.StartsWith("--", StringComparison.Ordinal))
            .Except(["--no-build", "--project", "--nologo", "--"])];
        Assert.Equal(4, options.Length);
        Assert.All(options, option => Assert.Contains(option, help, StringComparison.Ordinal));
    }
}
