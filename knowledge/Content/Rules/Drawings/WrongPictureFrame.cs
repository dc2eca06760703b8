using System.Xml.Linq;
using DxAssistant.Knowledge.Content.Constructs;

namespace DxAssistant.Knowledge.Content.Rules.Drawings;

/// <summary>A picture of another size than all others.</summary>
/// <example>Bad: <c>viewBox="0 0 24 24"</c>. Good: <c>viewBox="0 0 320 200"</c>.</example>
internal sealed class WrongPictureFrame : IContentRule
{
    public string Name => "wrong-picture-frame";

    public string Meaning => "A picture of another size than all others.";

    public bool LooksAtAll => true;

    public RuleExample Bad { get; } = new("pictures/room-sensor.svg", """
        <svg xmlns="http://www.w3.org/2000/svg" viewBox="⟦0 0 24 24⟧">
          <title>The plug</title>
          <circle class="ink" cx="12" cy="12" r="4"/>
        </svg>
        """);

    public RuleExample Good { get; } = new("pictures/room-sensor.svg", """
        <svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 320 200">
          <title>The plug</title>
          <circle class="ink" cx="40" cy="40" r="4"/>
        </svg>
        """);

    public IEnumerable<Diagnostic> Check(Pages pages)
    {
        foreach (var picture in pages.Pictures.Where(picture => picture.Root is not null))
        {
            XAttribute? frame = picture.Root!.Attribute("viewBox");
            if (frame?.Value != PictureParts.ViewBox)
            {
                yield return picture.Error(Name,
                    frame is null ? picture.SpanOf(picture.Root, "svg") : picture.ValueSpan(frame),
                    frame is null ? "the picture has no frame" : "the picture has another frame than all others",
                    $"write `viewBox=\"{PictureParts.ViewBox}\"` and draw inside it");
            }
        }
    }
}
