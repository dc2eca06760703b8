using System.Xml.Linq;
using DxAssistant.Knowledge.Content.Constructs;
using DxAssistant.Knowledge.Content.Syntax;

namespace DxAssistant.Knowledge.Content.Rules.Drawings;

/// <summary>
/// An element or attribute that no picture may have: styles, animations, pixels, an editor's own marks.
/// </summary>
/// <example>Bad: <c>&lt;circle style="…" r="4"/&gt;</c>. Good: <c>&lt;circle class="live" r="4"/&gt;</c>.</example>
internal sealed class UnknownPicturePart : IContentRule
{
    public string Name => "unknown-picture-part";

    public string Meaning =>
        "An element or attribute that no picture may have: styles, animations, pixels, an editor's own marks.";

    public bool LooksAtAll => true;

    public RuleExample Bad { get; } = new("pictures/room-sensor.svg", """
        <svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 320 200">
          <title>The plug</title>
          <circle ⟦style⟧="stroke: red" cx="40" cy="40" r="4"/>
        </svg>
        """);

    public RuleExample Good { get; } = new("pictures/room-sensor.svg", """
        <svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 320 200">
          <title>The plug</title>
          <circle class="live" cx="40" cy="40" r="4"/>
        </svg>
        """);

    public IEnumerable<Diagnostic> Check(Pages pages) =>
        pages.Pictures.SelectMany(picture => Elements(picture).Concat(Attributes(picture)));

    // What can run is ScriptInPicture's.
    private IEnumerable<Diagnostic> Elements(PictureFile picture) =>
        from element in picture.Elements
        where !IsKnown(element) && !PictureParts.Runs(element)
        let name = element.Name.LocalName
        select picture.Error(Name, picture.SpanOf(element, name), $"`{name}` has no place in a picture",
            NearestWord.HintOrList(name, PictureParts.Elements));

    private IEnumerable<Diagnostic> Attributes(PictureFile picture) =>
        from attribute in picture.Attributes
        where IsKnown(attribute.Parent!) && !IsKnown(attribute) && !PictureParts.Runs(attribute)
        let name = attribute.Name.LocalName
        select picture.Error(Name, picture.SpanOf(attribute, name), $"`{name}` has no place in a picture",
            name is "style" or "color"
                ? "give it a class: " + string.Join(", ", PictureParts.Classes.Order(StringComparer.Ordinal))
                : NearestWord.Hint(name, PictureParts.Attributes) ?? "take it out");

    private static bool IsKnown(XElement element) =>
        element.Name.Namespace == PictureParts.Svg && PictureParts.Elements.Contains(element.Name.LocalName);

    private static bool IsKnown(XAttribute attribute) =>
        (attribute.Name.Namespace == XNamespace.None || attribute.Name.LocalName == "href")
        && PictureParts.Attributes.Contains(attribute.Name.LocalName);
}
