using System.Collections.Immutable;

namespace DxAssistant.Knowledge.Content;

/// <summary>What became of a content folder.</summary>
/// <param name="Library">The knowledge, or null when there is any error.</param>
/// <param name="Diagnostics">Everything found in one run, sorted by path, line, column and name.</param>
public sealed record CompileResult(Library? Library, ImmutableArray<Diagnostic> Diagnostics)
{
    /// <summary>True when no diagnostic is an error.</summary>
    public bool IsClean => Diagnostics.All(diagnostic => diagnostic.Severity != Severity.Error);
}
