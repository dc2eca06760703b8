using System.Xml;
using System.Xml.Linq;
using DxAssistant.Knowledge.Content.Constructs;

namespace DxAssistant.Knowledge.Content.Syntax;

/// <summary>Reads one picture.</summary>
internal static class PictureParser
{
    /// <summary>The longest picture, in characters: it is sent whenever the page is shown.</summary>
    public const int LongestPicture = 20_000;

    /// <summary>The deepest nesting of elements; drawings by hand need five.</summary>
    public const int DeepestNesting = 20;

    private const string DocumentType = "<!DOCTYPE";

    // Nothing is looked up outside the text: no document type, no entity, no address.
    private static readonly XmlReaderSettings Settings = new()
    {
        DtdProcessing = DtdProcessing.Prohibit,
        XmlResolver = null,
        IgnoreComments = true,
        IgnoreProcessingInstructions = true,
    };

    /// <summary>Reads a picture; what cannot be read is a problem, never thrown.</summary>
    public static PictureFile Parse(ContentFile file)
    {
        var source = new SourceText(file.Path, file.Text);
        if (file.Text.Length > LongestPicture)
        {
            return new PictureFile(source, null, $"the picture is longer than {LongestPicture} characters", default);
        }

        if (file.Text.IndexOf(DocumentType, StringComparison.OrdinalIgnoreCase) is >= 0 and int type)
        {
            return new PictureFile(source, null, "the picture has a document type; take its lines out",
                new TextSpan(type, DocumentType.Length));
        }

        try
        {
            using var reader = XmlReader.Create(new StringReader(file.Text), Settings);
            XElement root = XDocument.Load(reader, LoadOptions.SetLineInfo).Root!;
            var picture = new PictureFile(source, root, null, default);
            return ProblemOf(root) is not { } problem ? picture : picture with
            {
                Root = null,
                Problem = problem,
                ProblemSpan = picture.SpanOf(root, root.Name.LocalName),
            };
        }
        catch (XmlException bad)
        {
            return new PictureFile(source, null, "the picture is not XML: " + Clause(bad.Message),
                new TextSpan(source.Offset(bad.LineNumber, bad.LinePosition), 0));
        }
    }

    private static string? ProblemOf(XElement root) =>
        root.Name != PictureParts.Svg + "svg" ? "the outermost element is not `svg` in the namespace of SVG"
        : root.Descendants().Any(element => element.Ancestors().Skip(DeepestNesting).Any())
            ? $"elements are nested deeper than {DeepestNesting}"
        : null;

    // .NET ends its sentence with the place, which the diagnostic gives already.
    private static string Clause(string message)
    {
        int place = message.IndexOf(" Line ", StringComparison.Ordinal);
        string text = (place < 0 ? message : message[..place]).Split('\n')[0].Trim().TrimEnd('.');
        return text.Length == 0 ? "unreadable" : char.ToLowerInvariant(text[0]) + text[1..];
    }
}
