using DxAssistant.Knowledge.Content.Constructs;

namespace DxAssistant.Knowledge.Content.Rules.Drawings;

/// <summary>A colour of its own, which would not be seen on dark paper, or not on light.</summary>
/// <example>Bad: <c>&lt;circle fill="#c00" r="4"/&gt;</c>. Good: <c>&lt;circle class="live" fill="currentColor"
/// r="4"/&gt;</c>.</example>
internal sealed class ColourInPicture : IContentRule
{
    public string Name => "colour-in-picture";

    public string Meaning => "A colour of its own, which would not be seen on dark paper, or not on light.";

    public bool LooksAtAll => true;

    public RuleExample Bad { get; } = new("pictures/room-sensor.svg", """
        <svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 320 200">
          <title>The plug</title>
          <circle fill="⟦#c00⟧" cx="40" cy="40" r="4"/>
        </svg>
        """);

    public RuleExample Good { get; } = new("pictures/room-sensor.svg", """
        <svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 320 200">
          <title>The plug</title>
          <circle class="live" fill="currentColor" cx="40" cy="40" r="4"/>
        </svg>
        """);

    public IEnumerable<Diagnostic> Check(Pages pages) =>
        from picture in pages.Pictures
        from attribute in picture.Attributes
        where PictureParts.IsColour(attribute) && !PictureParts.Runs(attribute)
            && attribute.Value is not ("none" or "currentColor") && PictureParts.Reference(attribute) is null
        select picture.Error(Name, picture.ValueSpan(attribute), $"`{attribute.Value}` is a colour of its own",
            "write `none` or `currentColor` and give a class, which is coloured for light and dark paper");
}
