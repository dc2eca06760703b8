using System.Collections.Immutable;
using DxAssistant.Knowledge.Content.Building;
using DxAssistant.Knowledge.Content.Rules;

namespace DxAssistant.Knowledge.Content;

/// <summary>Turns a folder of pages into knowledge, or says what is wrong with it.</summary>
public static class ContentCompiler
{
    /// <summary>Parses all pages and applies all rules. Never throws for anything that stands in a page.</summary>
    public static CompileResult Compile(ContentFolder folder)
    {
        Pages pages = Pages.Parse(folder);
        ImmutableArray<Diagnostic> found = [.. ContentRules.All.SelectMany(rule => rule.Check(pages)).Order()];
        bool isClean = found.All(diagnostic => diagnostic.Severity != Severity.Error);
        return new CompileResult(isClean ? LibraryBuilder.Build(folder, pages) : null, found);
    }
}
