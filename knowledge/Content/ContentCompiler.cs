using System.Collections.Immutable;
using DxAssistant.Knowledge.Content.Building;
using DxAssistant.Knowledge.Content.Languages;
using DxAssistant.Knowledge.Content.Rules;

namespace DxAssistant.Knowledge.Content;

/// <summary>Turns a folder of pages into knowledge, or says what is wrong with it.</summary>
public static class ContentCompiler
{
    /// <summary>Parses all pages and applies all rules. Never throws for anything that stands in a page.</summary>
    public static CompileResult Compile(ContentFolder folder)
    {
        Pages pages = Pages.Parse(folder);
        ImmutableArray<Diagnostic> found = Check(pages);
        bool isClean = found.All(diagnostic => diagnostic.Severity != Severity.Error);
        return new CompileResult(isClean ? LibraryBuilder.Build(folder, pages) : null, found);
    }

    /// <summary>
    /// Makes a library of pages that were checked before, without checking them again. Pages in other languages are
    /// not even read before one of those is spoken.
    /// </summary>
    /// <exception cref="InvalidOperationException">They were not clean after all.</exception>
    public static Library Rebuild(ContentFolder folder)
    {
        try
        {
            ILookup<bool, ContentFile> files = folder.Files.ToLookup(file => LanguageOfPath.Of(file.Path) is null);
            Pages main = Pages.Parse(ContentFolder.Of(files[true]));
            return LibraryBuilder.BuildLate(folder, main, tag => main.With(files[false]).In(tag));
        }
        catch (Exception error) when (error is KeyNotFoundException or ArgumentException or NullReferenceException
            or FormatException)
        {
            throw new InvalidOperationException("these pages were never checked", error);
        }
    }

    private static ImmutableArray<Diagnostic> Check(Pages pages)
    {
        ILookup<bool, IContentRule> rules = ContentRules.All.ToLookup(rule => rule.NeedsFrame);
        Diagnostic[] first = [.. rules[false].SelectMany(rule => rule.Check(pages))];
        HashSet<string> frameRules = [.. ContentRules.All.Where(rule => rule.IsAboutFrame).Select(rule => rule.Name)];
        HashSet<string> bent = [.. first.Where(found => frameRules.Contains(found.Name))
            .Select(found => found.At.Path)];
        IEnumerable<Diagnostic> rest = rules[true].SelectMany(rule => rule.Check(pages))
            .Where(found => !bent.Contains(found.At.Path));
        return [.. first.Concat(rest).Order()];
    }
}
