using System.Diagnostics;

using DxAssistant.Knowledge.Exchange;

namespace DxAssistant.Knowledge.Tests.Exchange;

/// <summary>
/// The graph of the shipped pages in the DOT language, read by its grammar and by the program it is written for.
/// </summary>
public sealed class DotTests
{
    [Fact]
    public void ShippedPages_ReadByTheGrammar_HaveEveryNodeAndLink() =>
        AssertWhole(DotReader.Read(GraphVizText.Write(ShippedPages.Library)));

    // dot -Tcanon: reads the graph and writes it again in canonical form, without laying it out.
    [GraphVizFact]
    public async Task ShippedPages_ReadByGraphViz_HaveEveryNodeAndLink()
    {
        using Process dot = Process.Start(new ProcessStartInfo(GraphVizFactAttribute.Program!, "-Tcanon")
        {
            RedirectStandardInput = true, RedirectStandardOutput = true, RedirectStandardError = true,
        })!;
        Task<string> written = dot.StandardOutput.ReadToEndAsync(), said = dot.StandardError.ReadToEndAsync();
        await dot.StandardInput.WriteAsync(GraphVizText.Write(ShippedPages.Library));
        dot.StandardInput.Close();
        await dot.WaitForExitAsync();

        Assert.Equal((0, ""), (dot.ExitCode, await said));
        AssertWhole(DotReader.Read(await written));
    }

    [Fact]
    public void Reader_AllThatADirectedGraphMayHold_IsRead()
    {
        DotReader read = DotReader.Read("""
            strict digraph "a \"walk\"" { rankdir=LR // from left to right
              NODE [shape=box] [color=red; width=-.5,]
              a -> b_2 -> 3.5 [label="two
            lines"]; /* and
            so on */ "a" [] }
            """);
        Assert.Equal(["3.5", "a", "b_2"], read.Nodes.Order(StringComparer.Ordinal));
        Assert.Equal([("a", "b_2"), ("b_2", "3.5")], read.Edges);
    }

    [Theory]
    [InlineData("digraph g { \"a\" -> ; }")]
    [InlineData("digraph g { \"a\" [label=]; }")]
    [InlineData("digraph g { \"a }")]
    [InlineData("digraph g { a -> b;")]
    [InlineData("digraph g { a -- b; }")]
    [InlineData("digraph g { a.b -> c; }")]
    [InlineData("digraph g { two words [label=x}; }")]
    [InlineData("digraph g { node; }")]
    [InlineData("digraph g { edge -> a; }")]
    [InlineData("digraph g { } }")]
    [InlineData("graph g { }")]
    public void Reader_TextThatIsNoDirectedGraph_IsRefused(string text) =>
        Assert.Throws<FormatException>(() => DotReader.Read(text));

    private static void AssertWhole(DotReader read)
    {
        Assert.Equal(Names(ShippedPages.Library.Graph.Nodes), read.Nodes.Order(StringComparer.Ordinal));
        Assert.Equal(
            ShippedPages.Library.Graph.Links.Select(link => (NodeNames.Key(link.Source), NodeNames.Key(link.Target)))
                .Order(),
            read.Edges.Order());
    }

    private static IEnumerable<string> Names(IEnumerable<Graph.Model.Node> nodes) =>
        nodes.Select(NodeNames.Key).Order(StringComparer.Ordinal);
}
