using System.Xml;
using System.Xml.Linq;
using System.Xml.Schema;
using DxAssistant.Knowledge.Tests.Content;

namespace DxAssistant.Knowledge.Tests.Exchange;

/// <summary>Holds a text to an XML schema of tests/Reference.</summary>
internal static class Schema
{
    /// <summary>What the schema finds wrong.</summary>
    public static List<string> Faults(string xml, string schema)
    {
        var faults = new List<string>();
        var schemas = new XmlSchemaSet();
        using (XmlReader reader = XmlReader.Create(
            Path.Combine(RepositoryFolder.Root(), "tests", "Reference", schema))) schemas.Add(null, reader);
        XDocument.Parse(xml).Validate(schemas, (_, fault) => faults.Add(fault.Message));
        return faults;
    }
}
