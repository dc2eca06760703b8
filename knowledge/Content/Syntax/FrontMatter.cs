using System.Collections.Immutable;

namespace DxAssistant.Knowledge.Content.Syntax;

/// <summary>The fields between the two <c>---</c> lines, in the order written.</summary>
/// <param name="Fields">What could be read.</param>
/// <param name="Problem">What stopped the reading, or null.</param>
/// <param name="ProblemSpan">Where it stopped.</param>
/// <param name="End">The closing line.</param>
internal sealed record FrontMatter(
    ImmutableArray<FrontMatterField> Fields, string? Problem, TextSpan ProblemSpan, TextSpan End)
{
    /// <summary>What to do about the problem, when that can be told.</summary>
    public string? Help { get; init; }

    public FrontMatterField? Field(string name) => Fields.FirstOrDefault(field => field.Name == name);
}
