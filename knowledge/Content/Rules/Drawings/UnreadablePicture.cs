namespace DxAssistant.Knowledge.Content.Rules.Drawings;

/// <summary>A picture that is not an SVG drawing, or too long to be sent.</summary>
/// <example>Bad: <c>a circle whose tag is not closed</c>. Good: <c>&lt;circle r="4"/&gt;</c>.</example>
internal sealed class UnreadablePicture : IContentRule
{
    public string Name => "unreadable-picture";

    public string Meaning => "A picture that is not an SVG drawing, or too long to be sent.";

    public bool LooksAtAll => true;

    public RuleExample Bad { get; } = new("pictures/room-sensor.svg", """
        <svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 320 200">
          <title>The plug</title>
          <circle class="ink" cx="40" cy="40" r="4">
        </⟦⟧svg>
        """);

    public RuleExample Good { get; } = new("pictures/room-sensor.svg", """
        <svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 320 200">
          <title>The plug</title>
          <circle class="ink" cx="40" cy="40" r="4"/>
        </svg>
        """);

    public IEnumerable<Diagnostic> Check(Pages pages) =>
        from picture in pages.Pictures
        where picture.Problem is not null
        select picture.Error(Name, picture.ProblemSpan, picture.Problem!,
            "the file begins with `<svg xmlns=\"http://www.w3.org/2000/svg\"` and every tag is closed");
}
