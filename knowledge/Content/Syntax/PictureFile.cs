using System.Collections.Immutable;
using System.Xml;
using System.Xml.Linq;

namespace DxAssistant.Knowledge.Content.Syntax;

/// <summary>A picture as drawn, before anybody asks whether it may be shown.</summary>
/// <param name="Root">The outermost element, or null when the file could not be read.</param>
/// <param name="Problem">What stopped the reading, or null.</param>
/// <param name="ProblemSpan">Where it stopped.</param>
internal sealed record PictureFile(SourceText Source, XElement? Root, string? Problem, TextSpan ProblemSpan)
{
    public string Path => Source.Path;

    /// <summary>The file's name without folder and <c>.svg</c>.</summary>
    public string FileId => System.IO.Path.GetFileNameWithoutExtension(Path);

    /// <summary>All elements, the outermost first; none when the file could not be read.</summary>
    public IEnumerable<XElement> Elements => Root?.DescendantsAndSelf() ?? [];

    /// <summary>The words of the first <c>title</c> directly inside the outermost element; empty without one.</summary>
    public string Title => Root?.Elements().FirstOrDefault(element => element.Name.LocalName == "title")?.Value.Trim()
        ?? "";

    /// <summary>The attributes that say something, each with its element; the names of namespaces left out.</summary>
    public IEnumerable<XAttribute> Attributes =>
        Elements.SelectMany(element => element.Attributes()).Where(attribute => !attribute.IsNamespaceDeclaration);

    /// <summary>The ids that are given in it.</summary>
    public ImmutableHashSet<string> Ids =>
        [.. Attributes.Where(attribute => attribute.Name == "id").Select(attribute => attribute.Value)];

    /// <summary>The name of an element or attribute, where it begins.</summary>
    public TextSpan SpanOf(XObject part, string name) =>
        part is IXmlLineInfo at && at.HasLineInfo()
            ? new TextSpan(Source.Offset(at.LineNumber, at.LinePosition), name.Length)
            : default;

    /// <summary>The value of an attribute as written, between its quotes.</summary>
    public TextSpan ValueSpan(XAttribute attribute)
    {
        int start = SpanOf(attribute, "").Start;
        int open = Source.Text.IndexOfAny(['"', '\''], start);
        int close = open < 0 ? -1 : Source.Text.IndexOf(Source.Text[open], open + 1);
        return close < 0 ? new TextSpan(start, 0) : TextSpan.Between(open + 1, close);
    }

    /// <summary>An error at a place of this picture.</summary>
    public Diagnostic Error(string name, TextSpan at, string message, Remedy? remedy = null) =>
        Source.Error(name, at, message, remedy);
}
