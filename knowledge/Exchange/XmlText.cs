using System.Xml;
using System.Xml.Linq;

namespace DxAssistant.Knowledge.Exchange;

/// <summary>XML the same on every system: UTF-8, two spaces, LF.</summary>
internal static class XmlText
{
    public static string Write(XElement root)
    {
        using Utf8Writer text = new();
        XmlWriterSettings settings = new() { Indent = true, IndentChars = "  ", NewLineChars = "\n" };
        using (XmlWriter writer = XmlWriter.Create(text, settings)) root.WriteTo(writer);
        return text + "\n";
    }

    // A string writer says UTF-16 of itself; the file will be UTF-8.
    private sealed class Utf8Writer : StringWriter
    {
        public Utf8Writer() : base(System.Globalization.CultureInfo.InvariantCulture) { }

        public override System.Text.Encoding Encoding => System.Text.Encoding.UTF8;
    }
}
