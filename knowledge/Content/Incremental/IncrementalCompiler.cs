using System.Collections.Immutable;
using DxAssistant.Knowledge.Content.Building;
using DxAssistant.Knowledge.Content.Rules;
using DxAssistant.Knowledge.Content.Syntax;

namespace DxAssistant.Knowledge.Content.Incremental;

/// <summary>Compiles a folder again and again, and does anew only what a change can have changed. The result is that of
/// <see cref="ContentCompiler"/>. Not for use from several threads at once.</summary>
public sealed class IncrementalCompiler
{
    private static readonly ImmutableArray<IContentRule> Early =
        [.. ContentRules.All.Where(rule => rule.LooksAtAll && !rule.NeedsFrame)];
    private static readonly ImmutableArray<IContentRule> Late =
        [.. ContentRules.All.Where(rule => rule.LooksAtAll && rule.NeedsFrame)];
    private static readonly ImmutableHashSet<string> FrameRules =
        [.. ContentRules.All.Where(rule => rule.IsAboutFrame).Select(rule => rule.Name)];

    private readonly KeptParts parts = new();
    private readonly ParsedFiles<Page> parsed = new(PageParser.Parse);
    private readonly ParsedFiles<PictureFile> drawn = new(PictureParser.Parse);
    private readonly Conclusion?[] concluded = new Conclusion?[CheckedPage.Gathering.Length];

    // Of the pages of the last compile, in their order.
    private CheckedPage[] found = [];

    /// <summary>The pages of the last compile; null before the first.</summary>
    internal Pages? Pages { get; private set; }

    /// <summary>Compiles a folder; quick when little differs from the folder before.</summary>
    public CompileResult Compile(ContentFolder folder)
    {
        List<(Page? Old, Page? New)> changed = parsed.Take(folder.Pages);
        var change = FolderChange.Of(changed, drawn.Take(folder.Pictures).Count > 0);
        Pages pages = Pages is { } before && !change.Ids && !change.Pictures
            ? before.Edited([.. changed.Select(pair => pair.New!)])
            : Content.Pages.Of(parsed.Parsed, drawn.Parsed);
        found = Check(pages, change);
        Pages = pages;
        ImmutableArray<Diagnostic> diagnostics = Diagnostics(pages);
        bool isClean = diagnostics.All(each => each.Severity != Severity.Error);
        return new CompileResult(isClean ? LibraryBuilder.Build(folder, pages, parts) : null, diagnostics);
    }

    private CheckedPage[] Check(Pages pages, FolderChange change)
    {
        if (!change.Ids && found.Length == pages.All.Length)
            return [.. found.Select((old, place) => Again(old, pages.All[place], pages, change))];
        Dictionary<Page, CheckedPage> known = found.ToDictionary(old => old.Page);
        return [.. pages.All.Select(page => Again(known.GetValueOrDefault(page), page, pages, change))];
    }

    private static CheckedPage Again(CheckedPage? old, Page page, Pages pages, FolderChange change) =>
        old is not null && ReferenceEquals(old.Page, page) && !old.Needs.Meet(change)
            ? old
            : CheckedPage.Of(page, pages);

    private IEnumerable<Diagnostic> Check(IContentRule rule, Pages pages)
    {
        if (rule is not IGatheringRule gathering) return rule.Check(pages);
        int place = CheckedPage.Gathering.IndexOf(gathering);
        List<object> gathered = [];
        foreach (CheckedPage page in found) if (page.Gathered[place] is { } told) gathered.Add(told);
        return (concluded[place] = Conclusion.Of(gathering, gathered, concluded[place])).Found;
    }

    private ImmutableArray<Diagnostic> Diagnostics(Pages pages)
    {
        Diagnostic[] first = [.. OfPages(page => page.First), .. Early.SelectMany(rule => Check(rule, pages))];
        HashSet<string> bent = [.. first.Where(each => FrameRules.Contains(each.Name)).Select(each => each.At.Path)];
        IEnumerable<Diagnostic> rest = OfPages(page => page.Rest)
            .Concat(Late.SelectMany(rule => Check(rule, pages))).Where(each => !bent.Contains(each.At.Path));
        return [.. first.Concat(rest).Order()];
    }

    private IEnumerable<Diagnostic> OfPages(Func<CheckedPage, ImmutableArray<Diagnostic>> which)
    {
        foreach (CheckedPage page in found)
            foreach (Diagnostic each in which(page)) yield return each;
    }
}
