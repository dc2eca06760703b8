using DxAssistant.Graph.Model;
using DxAssistant.Knowledge.Content;

namespace DxAssistant.Knowledge.Exchange;

/// <summary>What the nodes and links of the fault graph are called in a file.</summary>
internal static class NodeNames
{
    public static string Kind(Node node) => node switch
    {
        Node.OfSymptom => "symptom",
        Node.OfFault => "fault",
        Node.OfCheck => "check",
        Node.OfRepair => "repair",
        _ => "access",
    };

    /// <summary>Kind and id: unique in the graph.</summary>
    public static string Key(Node node) => $"{Kind(node)} {Id(node)}";

    public static string Title(Node node, Library library) => node switch
    {
        Node.OfSymptom symptom => library.Symptoms[symptom.Id].Title.Text,
        Node.OfFault fault => library.Faults[fault.Id].Title.Text,
        Node.OfCheck check => library.Checks[check.Id].Title.Text,
        Node.OfRepair repair => library.Repairs[repair.Id].Title.Text,
        Node.OfAccess access => library.Access[access.Id].Title.Text,
        _ => Id(node),
    };

    public static string Relation(Link link) => link switch
    {
        Link.Causes => "causes",
        Link.Separates => "separates",
        Link.Cures => "cures",
        Link.LeadsTo => "leads to",
        _ => "done in",
    };

    /// <summary>P(symptom | fault), or minutes from state to state.</summary>
    public static double? Number(Link link) => link switch
    {
        Link.Causes causes => causes.Probability,
        Link.LeadsTo leads => leads.Minutes,
        _ => null,
    };

    private static string Id(Node node) => node switch
    {
        Node.OfSymptom symptom => symptom.Id.Value,
        Node.OfFault fault => fault.Id.Value,
        Node.OfCheck check => check.Id.Value,
        Node.OfRepair repair => repair.Id.Value,
        Node.OfAccess access => access.Id.Value,
        _ => "",
    };
}
