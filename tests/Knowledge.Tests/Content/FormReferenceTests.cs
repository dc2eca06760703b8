using DxAssistant.Knowledge.Content.Shapes;
using DxAssistant.Knowledge.Content.Syntax;

namespace DxAssistant.Knowledge.Tests.Content;

/// <summary>The form of the pages as DEVELOPERS.md tells it against what the reader takes.</summary>
public sealed class FormReferenceTests
{
    private static readonly string Guide = File.ReadAllText(Path.Combine(RepositoryFolder.Root(), "DEVELOPERS.md"))
        .ReplaceLineEndings("\n");

    private static readonly string[] Ends = ["\n### ", "\n## Add ", "\n## Tests"];

    public static TheoryData<string> Kinds => [.. PageShapes.KindWords];

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Guide_EveryFieldOfAKind_IsNamed(string kind) =>
        Assert.DoesNotContain(Shape(kind).Fields.Select(field => field.Name), name => name is not ("kind" or "id")
            && !Names(Part(kind), name));

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Guide_EveryHeadingOfAKind_IsNamed(string kind) =>
        Assert.DoesNotContain(Shape(kind).Sections.Select(section => section.Heading), heading => !Part(kind)
            .Contains($"## {heading}", StringComparison.Ordinal)
            && !Part(kind).Contains($"`{heading}`", StringComparison.Ordinal));

    [Fact]
    public void Names_FieldThatNoPageHas_IsNotNamed() => Assert.False(Names(Part("check"), "minute"));

    private static PageShape Shape(string kind) => PageShapes.Of(PageShapes.KindNamed(kind)!.Value);

    // In front matter at the start of a line, or in words between backticks.
    private static bool Names(string part, string field) =>
        part.Contains($"\n{field}:", StringComparison.Ordinal) || part.Contains($"`{field}`", StringComparison.Ordinal)
        || part.Contains($"`{field}: ", StringComparison.Ordinal);

    // The part with the kind's own name, or else the table of all kinds; languages have a part of their own.
    private static string Part(string kind)
    {
        string head = kind == "language" ? "\n## Add a language\n" : $"\n### {kind}\n";
        int start = Guide.IndexOf(head, StringComparison.Ordinal);
        if (start < 0) return Line(kind);
        int[] ends = [.. Ends.Select(next => Guide.IndexOf(next, start + head.Length, StringComparison.Ordinal))
            .Where(at => at > 0)];
        return Guide[start..ends.Min()];
    }

    private static string Line(string kind) =>
        Guide.Split('\n').First(line => line.StartsWith($"| {kind} |", StringComparison.Ordinal));
}
