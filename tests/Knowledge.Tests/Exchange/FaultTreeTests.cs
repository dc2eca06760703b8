using System.Globalization;
using System.Xml.Linq;
using DxAssistant.Graph.Model;

using DxAssistant.Knowledge.Exchange;

namespace DxAssistant.Knowledge.Tests.Exchange;

/// <summary>The causes of the shipped symptoms as fault trees of the Open-PSA Model Exchange Format.</summary>
/// <remarks>Source: Open-PSA Model Exchange Format 2.0d, its rules as a schema in tests/Reference.</remarks>
public sealed class FaultTreeTests
{
    private const string Rules = "open-psa-mef-2.0d-part.xsd";

    [Fact]
    public void ShippedPages_ByTheRulesOfTheFormat_AreValid() =>
        Assert.Empty(Schema.Faults(FaultTreeText.Write(ShippedPages.Library), Rules));

    [Theory]
    [InlineData("<define-fault-tree name='a.b'/>")]
    [InlineData("<define-fault-tree name='a--b'/>")]
    [InlineData("<define-fault-tree name='a'><define-gate name='b'/></define-fault-tree>")]
    [InlineData("<define-fault-tree name='a'><define-gate name='b'><or/></define-gate></define-fault-tree>")]
    [InlineData("<define-fault-tree name='a'><define-gate name='b'><gate name='c'/></define-gate></define-fault-tree>")]
    [InlineData("<model-data><define-basic-event name='a'/><define-basic-event name='a'/></model-data>")]
    [InlineData("<model-data><define-basic-event name='a'><float value='often'/></define-basic-event></model-data>")]
    [InlineData("<model-data/><define-fault-tree name='a'/>")]
    public void TextThatIsWrong_ByTheRulesOfTheFormat_IsFoundOut(string inner) =>
        Assert.NotEmpty(Schema.Faults($"<opsa-mef>{inner}</opsa-mef>", Rules));

    // One fault is present, so the causes of a symptom exclude each other: the top is the sum of its branches.
    [Fact]
    public void ShippedPages_EveryTreeReckonedUp_IsHowOftenItsSymptomIsSeen()
    {
        XElement root = XDocument.Parse(FaultTreeText.Write(ShippedPages.Library)).Root!;
        Dictionary<string, double> events = root.Descendants("define-basic-event").ToDictionary(
            Name, one => double.Parse(one.Element("float")!.Attribute("value")!.Value, CultureInfo.InvariantCulture));
        double all = ShippedPages.Library.Graph.Faults.Sum(fault => fault.Weight);
        foreach (Symptom symptom in ShippedPages.Library.Graph.Symptoms)
        {
            XElement tree = root.Elements("define-fault-tree").Single(one => Name(one) == $"tree-{symptom.Id}");
            double top = tree.Descendants("and")
                .Sum(both => both.Elements("basic-event").Aggregate(1.0, (sum, one) => sum * events[Name(one)]));
            Assert.Equal(
                symptom.Causes.Sum(cause => ShippedPages.Library.Graph.Find(cause.Key)!.Weight / all * cause.Value),
                top, 6);
        }
    }

    private static string Name(XElement element) => element.Attribute("name")!.Value;
}
