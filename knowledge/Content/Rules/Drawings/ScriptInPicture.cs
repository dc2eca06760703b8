using DxAssistant.Knowledge.Content.Constructs;

namespace DxAssistant.Knowledge.Content.Rules.Drawings;

/// <summary>Something in a picture that can run.</summary>
/// <example>Bad: <c>&lt;circle onclick="go()" r="4"/&gt;</c>. Good: <c>&lt;circle r="4"/&gt;</c>.</example>
internal sealed class ScriptInPicture : IContentRule
{
    public string Name => "script-in-picture";

    public string Meaning => "Something in a picture that can run.";

    public bool LooksAtAll => true;

    public RuleExample Bad { get; } = new("pictures/room-sensor.svg", """
        <svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 320 200">
          <title>The plug</title>
          <circle class="ink" ⟦onclick⟧="go()" cx="40" cy="40" r="4"/>
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
        foreach (var picture in pages.Pictures)
        {
            foreach (var element in picture.Elements.Where(PictureParts.Runs))
            {
                yield return picture.Error(Name, picture.SpanOf(element, element.Name.LocalName),
                    $"`{element.Name.LocalName}` can run something", "a picture is only drawn: take it out");
            }

            foreach (var attribute in picture.Attributes.Where(PictureParts.Runs))
            {
                yield return picture.Error(Name, picture.SpanOf(attribute, attribute.Name.LocalName),
                    $"`{attribute.Name.LocalName}` can run something", "a picture is only drawn: take it out");
            }
        }
    }
}
