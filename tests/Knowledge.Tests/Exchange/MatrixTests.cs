using DxAssistant.Graph;
using DxAssistant.Graph.Model;
using DxAssistant.Knowledge.Content;
using DxAssistant.Knowledge.Exchange;

namespace DxAssistant.Knowledge.Tests.Exchange;

/// <summary>The shipped pages as a table of faults against checks, and pages made from that table.</summary>
public sealed class MatrixTests
{
    // Source: RFC 4180, 2: lines end with CR LF, all have as many fields; a field with comma, quote or line break is
    // quoted.
    [Fact]
    public void ShippedPages_AsATable_AreTheFormOfRfc4180()
    {
        string text = MatrixWriter.Write(DependencyMatrix.Of(ShippedPages.Library.Graph));
        string[] lines = text.Split("\r\n");

        Assert.Equal("", lines[^1]);
        Assert.DoesNotContain('\n', text.Replace("\r\n", "", StringComparison.Ordinal));
        Assert.Single(CommaSeparated.Rows(text).Select(row => row.Length).Distinct());
        Assert.Equal(ShippedPages.Library.Graph.Faults.Length + 1, CommaSeparated.Rows(text).Count());
    }

    [Fact]
    public void ShippedPages_ThroughATable_CompileAndReasonAlike()
    {
        string table = MatrixWriter.Write(DependencyMatrix.Of(ShippedPages.Library.Graph));
        CompileResult made = ContentCompiler.Compile(ContentFolder.Of(
            PageSkeleton.Of(MatrixReader.Read(table)).Pages.Select(page => new ContentFile(page.Key, page.Value))));

        Assert.All(made.Diagnostics, found => Assert.Equal("left-to-do", found.Name));
        FaultGraph old = ShippedPages.Library.Graph, now = made.Library!.Graph;
        Assert.Equal(old.Faults.Select(fault => (fault.Id, fault.Weight)),
            now.Faults.Select(fault => (fault.Id, fault.Weight)));
        Assert.Equal(old.Checks.Select(check => check.Id), now.Checks.Select(check => check.Id));
        foreach (Fault fault in old.Faults)
            foreach (Check check in old.Checks)
                Assert.All(check.Row(fault.Id).Zip(now.Find(check.Id)!.Row(fault.Id)),
                    pair => Assert.Equal(pair.First, pair.Second, 6));
    }

    // There and back nothing is lost, to the last digit.
    [Fact]
    public void ShippedPages_ThroughATable_MakeTheSameTable()
    {
        string table = MatrixWriter.Write(DependencyMatrix.Of(ShippedPages.Library.Graph));
        CompileResult made = ContentCompiler.Compile(ContentFolder.Of(
            PageSkeleton.Of(MatrixReader.Read(table)).Pages.Select(page => new ContentFile(page.Key, page.Value))));

        Assert.Equal(Lines(table), Lines(MatrixWriter.Write(DependencyMatrix.Of(made.Library!.Graph))));
    }

    private static string[] Lines(string table) => table.Split("\r\n");
}
