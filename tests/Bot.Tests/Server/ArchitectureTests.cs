using System.Reflection;
using DxAssistant.Cases;
using DxAssistant.Conversation;
using DxAssistant.Graph;
using DxAssistant.Knowledge.Content;
using DxAssistant.Server.Serving;

namespace DxAssistant.Bot.Tests.Server;

/// <summary>graph ← knowledge ← bot, and each library in its own place.</summary>
public sealed class ArchitectureTests
{
    private static readonly Assembly Graph = typeof(FaultGraph).Assembly;
    private static readonly Assembly Knowledge = typeof(Library).Assembly;
    private static readonly Assembly Conversation = typeof(Turn).Assembly;
    private static readonly Assembly Cases = typeof(CaseDesk).Assembly;
    private static readonly Assembly Server = typeof(ChatServer).Assembly;

    [Fact]
    public void References_OfOurOwn_GoOneWay()
    {
        Assert.Empty(OwnReferences(Graph));
        Assert.Subset(Names(Graph), OwnReferences(Knowledge));
        Assert.Subset(Names(Graph, Knowledge), OwnReferences(Conversation));
        Assert.Subset(Names(Graph, Knowledge, Conversation), OwnReferences(Cases));
        Assert.Subset(Names(Graph, Knowledge, Conversation, Cases), OwnReferences(Server));
    }

    [Theory]
    [InlineData("Markdig", "DxAssistant.Knowledge")]
    [InlineData("Lucene.Net", "DxAssistant.Knowledge")]
    [InlineData("QuikGraph", "DxAssistant.Graph")]
    [InlineData("Microsoft.AspNetCore", "DxAssistant.Server")]
    [InlineData("Microsoft.Bot", "DxAssistant.Server")]
    [InlineData("Microsoft.Data.Sqlite", "DxAssistant.Cases")]
    [InlineData("Npgsql", "DxAssistant.Cases")]
    public void References_Library_OnlyWhereItBelongs(string library, string home)
    {
        var users = new[] { Graph, Knowledge, Conversation, Cases, Server }
            .Where(a => References(a).Any(r => r == library || r.StartsWith(library + ".", StringComparison.Ordinal)))
            .Select(a => a.GetName().Name!);

        Assert.All(users, user => Assert.Equal(home, user));
    }

    private static IEnumerable<string> References(Assembly assembly) =>
        assembly.GetReferencedAssemblies().Select(r => r.Name!);

    private static HashSet<string> OwnReferences(Assembly assembly) =>
        [.. References(assembly).Where(r => r.StartsWith("DxAssistant.", StringComparison.Ordinal))];

    private static HashSet<string> Names(params Assembly[] assemblies) =>
        [.. assemblies.Select(a => a.GetName().Name!)];
}
