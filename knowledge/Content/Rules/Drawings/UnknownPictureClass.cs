using DxAssistant.Knowledge.Content.Constructs;

namespace DxAssistant.Knowledge.Content.Rules.Drawings;

/// <summary>A class that no paper colours.</summary>
/// <example>Bad: <c>&lt;circle class="lives" r="4"/&gt;</c>. Good: <c>&lt;circle class="live" r="4"/&gt;</c>.</example>
internal sealed class UnknownPictureClass : IContentRule
{
    public string Name => "unknown-picture-class";

    public string Meaning => "A class that no paper colours.";

    public bool LooksAtAll => true;

    public RuleExample Bad { get; } = new("pictures/room-sensor.svg", """
        <svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 320 200">
          <title>The plug</title>
          <circle class="⟦lives⟧" cx="40" cy="40" r="4"/>
        </svg>
        """);

    public RuleExample Good { get; } = new("pictures/room-sensor.svg", """
        <svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 320 200">
          <title>The plug</title>
          <circle class="live" cx="40" cy="40" r="4"/>
        </svg>
        """);

    public IEnumerable<Diagnostic> Check(Pages pages) =>
        from picture in pages.Pictures
        from attribute in picture.Attributes
        where attribute.Name == "class"
        let unknown = attribute.Value.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)
            .FirstOrDefault(word => !PictureParts.Classes.Contains(word))
        where unknown is not null
        select picture.Error(Name, picture.ValueSpan(attribute), $"`{unknown}` is not a class of a picture",
            NearestWord.HintOrList(unknown, PictureParts.Classes));
}
