using DxAssistant.Knowledge.Content.Constructs;

namespace DxAssistant.Knowledge.Content.Rules.Drawings;

/// <summary>A reference that leaves the picture, or points to nothing in it.</summary>
/// <example>Bad: <c>&lt;use href="plugs.svg#pin"/&gt;</c>. Good: <c>&lt;use href="#pin"/&gt;</c>.</example>
internal sealed class WrongPictureReference : IContentRule
{
    public string Name => "wrong-picture-reference";

    public string Meaning => "A reference that leaves the picture, or points to nothing in it.";

    public bool LooksAtAll => true;

    public RuleExample Bad { get; } = new("pictures/room-sensor.svg", """
        <svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 320 200">
          <title>The plug</title>
          <circle id="pin" class="ink" cx="40" cy="40" r="4"/>
          <use href="⟦plugs.svg#pin⟧" x="20"/>
        </svg>
        """);

    public RuleExample Good { get; } = new("pictures/room-sensor.svg", """
        <svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 320 200">
          <title>The plug</title>
          <circle id="pin" class="ink" cx="40" cy="40" r="4"/>
          <use href="#pin" x="20"/>
        </svg>
        """);

    public IEnumerable<Diagnostic> Check(Pages pages)
    {
        foreach (var picture in pages.Pictures)
        {
            var ids = picture.Ids;
            foreach (var attribute in picture.Attributes.Where(attribute => !PictureParts.Runs(attribute)))
            {
                if (PictureParts.Reference(attribute) is not { } reference
                    || (reference is ['#', .. var id] && ids.Contains(id)))
                {
                    continue;
                }

                bool inside = reference.StartsWith('#');
                yield return picture.Error(Name, picture.ValueSpan(attribute), inside
                        ? $"the picture has nothing with the id `{reference[1..]}`"
                        : $"`{reference}` lies outside the picture",
                    inside ? NearestWord.HintOrList(reference[1..], ids) : "draw it in the picture itself");
            }
        }
    }
}
