using System.Globalization;
using System.Xml.Linq;
using DxAssistant.Graph.Model;
using DxAssistant.Knowledge.Content;

namespace DxAssistant.Knowledge.Exchange;

/// <summary>
/// A fault tree for each symptom in the Open-PSA Model Exchange Format (2.0d; held to its schema in tests/Reference).
/// </summary>
/// <remarks>
/// The symptom is an OR over its causes; each cause is the fault AND its showing this symptom. The probability of a
/// fault is its share of all faults: exactly one is taken to be present.
/// </remarks>
public static class FaultTreeText
{
    public static string Write(Library library)
    {
        double all = library.Graph.Faults.Sum(fault => fault.Weight);
        return XmlText.Write(new XElement(
            "opsa-mef",
            library.Graph.Symptoms.Select(symptom => Tree(symptom, library)),
            new XElement(
                "model-data",
                library.Graph.Faults.Select(fault => BasicEvent(
                    $"fault-{fault.Id}", library.Faults[fault.Id].Title.Text, fault.Weight / all)),
                library.Graph.Symptoms.SelectMany(symptom => symptom.Causes.Select(cause => BasicEvent(
                    Showing(symptom.Id, cause.Key),
                    $"{library.Faults[cause.Key].Title.Text} shows: {library.Symptoms[symptom.Id].Title.Text}",
                    cause.Value))))));
    }

    private static XElement Tree(Symptom symptom, Library library) => new(
        "define-fault-tree", new XAttribute("name", $"tree-{symptom.Id}"),
        new XElement("label", library.Symptoms[symptom.Id].Title.Text),
        new XElement(
            "define-gate", new XAttribute("name", $"symptom-{symptom.Id}"),
            Either(symptom.Causes.Keys.Select(fault => Reference("gate", Cause(symptom.Id, fault))))),
        symptom.Causes.Keys.Select(fault => new XElement(
            "define-gate", new XAttribute("name", Cause(symptom.Id, fault)),
            new XElement("and", Reference("basic-event", $"fault-{fault}"),
                Reference("basic-event", Showing(symptom.Id, fault))))));

    // A gate of one input is the input itself: "or" asks for two.
    private static XElement Either(IEnumerable<XElement> inputs)
    {
        XElement[] all = [.. inputs];
        return all.Length == 1 ? all[0] : new XElement("or", all);
    }

    private static XElement BasicEvent(string name, string label, double probability) => new(
        "define-basic-event", new XAttribute("name", name), new XElement("label", label),
        new XElement("float",
            new XAttribute("value", probability.ToString("0.#########", CultureInfo.InvariantCulture))));

    private static XElement Reference(string kind, string name) => new(kind, new XAttribute("name", name));

    private static string Cause(SymptomId symptom, FaultId fault) => $"{symptom}-by-{fault}";

    private static string Showing(SymptomId symptom, FaultId fault) => $"{fault}-shows-{symptom}";
}
