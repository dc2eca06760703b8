using System.Xml.Linq;
using DxAssistant.Knowledge.Content.Constructs;
using DxAssistant.Knowledge.Content.Syntax;

namespace DxAssistant.Knowledge.Content.Building;

/// <summary>Makes a picture ready to stand in a page beside others.</summary>
internal static class PictureBuilder
{
    /// <summary>The drawing as one element, the same for the same file; ids get the picture's name in front.</summary>
    public static string Build(PictureFile file)
    {
        var drawing = new XElement(file.Root!);
        string name = file.FileId + "-";
        foreach (XAttribute attribute in drawing.DescendantsAndSelf().Attributes().ToList())
        {
            attribute.Value = attribute.Name.LocalName switch
            {
                "id" => name + attribute.Value,
                "aria-labelledby" => string.Join(' ', Words(attribute.Value).Select(id => name + id)),
                _ when PictureParts.Reference(attribute) is ['#', .. var id] =>
                    attribute.Value.Replace("#" + id, "#" + name + id, StringComparison.Ordinal),
                _ => attribute.Value,
            };
        }

        drawing.SetAttributeValue("role", "img");
        return drawing.ToString(SaveOptions.DisableFormatting).Replace("\r\n", "\n", StringComparison.Ordinal);
    }

    private static string[] Words(string text) =>
        text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries);
}
