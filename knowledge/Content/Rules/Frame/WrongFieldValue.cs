using System.Text.RegularExpressions;
using DxAssistant.Knowledge.Content.Constructs;
using DxAssistant.Knowledge.Content.Shapes;
using DxAssistant.Knowledge.Content.Syntax;

namespace DxAssistant.Knowledge.Content.Rules.Frame;

/// <summary>A field whose value is not of the right sort.</summary>
/// <example>Bad: <c>minutes: three</c>. Good: <c>minutes: 3</c>.</example>
internal sealed class WrongFieldValue : IContentRule
{
    public string Name => "wrong-field-value";

    public string Meaning => "A field whose value is not of the right sort.";

    public RuleExample Bad { get; } = new("checks/fan-plug.md", """
        ---
        kind: check
        id: fan-plug
        minutes: ⟦three⟧
        access: [isolated-open]
        who: technician
        ---
        """);

    public RuleExample Good { get; } = new("checks/fan-plug.md", """
        ---
        kind: check
        id: fan-plug
        minutes: 3
        access: [isolated-open]
        who: technician
        ---
        """);

    private const double LongestMinutes = 1440;

    public IEnumerable<Diagnostic> Check(Pages pages)
    {
        foreach (Page page in pages.All.Where(page => page.Kind is not null))
        {
            PageShape kind = PageShapes.Of(page.Kind!.Value);
            foreach (FrontMatterField field in page.Front!.Fields.Where(field => !field.Values.IsEmpty))
            {
                if (kind.Field(field.Name) is { } shape && Expected(shape, field) is { } expected)
                {
                    yield return page.Error(Name, field.Span, $"`{field.Name}` must be {expected}");
                }
            }
        }
    }

    // What the field should have been, or null when it is right.
    private static string? Expected(FieldShape shape, FrontMatterField field)
    {
        if (field.IsList && shape.Type is not (FieldType.Ids or FieldType.List))
        {
            return "one value, not a list";
        }

        return shape.Type switch
        {
            FieldType.Minutes when Number.Read(field.Text) is not (>= 0 and <= LongestMinutes) =>
                "a number of minutes, 0 to 1440",
            FieldType.Count when !(Number.Read(field.Text) is >= 0 and <= 1000 and double count && count % 1 == 0) =>
                "a whole number, 0 to 1000",
            FieldType.YesNo when field.Text is not ("true" or "false") => "`true` or `false`",
            FieldType.Choice when !shape.Choices.Contains(field.Text!) =>
                string.Join(" or ", shape.Choices.Select(choice => $"`{choice}`")),
            FieldType.Pattern when !IsPattern(field.Text!) => "a regular expression",
            _ => null,
        };
    }

    private static bool IsPattern(string text)
    {
        try
        {
            return new Regex(text, RegexOptions.NonBacktracking | RegexOptions.CultureInvariant) is not null;
        }
        catch (Exception bad) when (bad is ArgumentException or NotSupportedException)
        {
            return false;
        }
    }
}
