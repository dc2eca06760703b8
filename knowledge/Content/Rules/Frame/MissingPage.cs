using System.Collections.Immutable;
using DxAssistant.Knowledge.Content.Shapes;

namespace DxAssistant.Knowledge.Content.Rules.Frame;

/// <summary>A page without which no content works is not in the folder.</summary>
/// <example>Bad: <c>a folder without words.md</c>. Good: <c>a folder with words.md</c>.</example>
internal sealed class MissingPage : IContentRule
{
    public string Name => "missing-page";

    public string Meaning => "A page without which no content works is not in the folder.";

    public bool LooksAtAll => true;

    public RuleExample Bad { get; } = new("words.md", "");

    public RuleExample Good { get; } = new("words.md", "# Words");

    /// <summary>The fault that stands for everything the pages do not know.</summary>
    internal const string NoneOfThese = "none-of-these";

    /// <summary>The paths of the pages that must be there.</summary>
    internal static ImmutableArray<string> Needed { get; } =
        [.. PageShapes.SinglePages.Select(shape => shape.Word + ".md"), $"faults/{NoneOfThese}.md"];

    public IEnumerable<Diagnostic> Check(Pages pages) => Needed.Where(path => pages.AtPath(path) is null).Select(path =>
        new Diagnostic(Name, Severity.Error, new SourceSpan(path, 1, 1, 0), "the folder has no such page"));
}
