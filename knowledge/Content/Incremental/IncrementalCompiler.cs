using System.Collections.Immutable;
using DxAssistant.Knowledge.Content.Building;
using DxAssistant.Knowledge.Content.Rules;
using DxAssistant.Knowledge.Content.Syntax;

namespace DxAssistant.Knowledge.Content.Incremental;

/// <summary>Compiles a folder again and again, and does anew only what a change can have changed. The result is that of
/// <see cref="ContentCompiler"/>. Not for use from several threads at once.</summary>
public sealed class IncrementalCompiler
{
    private static readonly ImmutableArray<IContentRule> Early = [.. ContentRules.All.Where(rule => rule.LooksAtAll && !rule.NeedsFrame)];
    private static readonly ImmutableArray<IContentRule> Late = [.. ContentRules.All.Where(rule => rule.LooksAtAll && rule.NeedsFrame)];
    private static readonly ImmutableHashSet<string> FrameRules = [.. ContentRules.All.Where(rule => rule.IsAboutFrame).Select(rule => rule.Name)];

    private readonly KeptParts parts = new();
    private Dictionary<string, (ContentFile File, Page Page)> parsed = new(StringComparer.Ordinal);
    private Dictionary<string, (ContentFile File, PictureFile Picture)> drawn = new(StringComparer.Ordinal);
    private Dictionary<string, CheckedPage> found = new(StringComparer.Ordinal);

    private readonly Conclusion?[] concluded = new Conclusion?[CheckedPage.Gathering.Length];

    /// <summary>The pages of the last compile; null before the first.</summary>
    internal Pages? Pages { get; private set; }

    /// <summary>Compiles a folder; quick when little differs from the folder before.</summary>
    public CompileResult Compile(ContentFolder folder)
    {
        var before = parsed.ToDictionary(pair => pair.Key, pair => pair.Value.Page, StringComparer.Ordinal);
        parsed = Again(folder.Pages, parsed, PageParser.Parse);
        var drawnBefore = drawn;
        drawn = Again(folder.Pictures, drawn, PictureParser.Parse);
        bool pictures = drawn.Count != drawnBefore.Count
            || drawn.Any(pair => !ReferenceEquals(drawnBefore.GetValueOrDefault(pair.Key).Picture, pair.Value.Picture));
        var change = FolderChange.Of(
            before, parsed.ToDictionary(pair => pair.Key, pair => pair.Value.Page, StringComparer.Ordinal), pictures);
        Pages pages = Content.Pages.Of(folder.Pages.Select(file => parsed[file.Path].Page), [.. folder.Pictures.Select(file => drawn[file.Path].Picture)]);
        Pages = pages;
        found = pages.All.ToDictionary(page => page.Path, page => Check(page, pages, change), StringComparer.Ordinal);
        ImmutableArray<Diagnostic> diagnostics = Diagnostics(pages);
        bool isClean = diagnostics.All(each => each.Severity != Severity.Error);
        return new CompileResult(isClean ? LibraryBuilder.Build(folder, pages, parts) : null, diagnostics);
    }

    private static Dictionary<string, (ContentFile File, T Parsed)> Again<T>(
        ImmutableArray<ContentFile> files, Dictionary<string, (ContentFile File, T Parsed)> known, Func<ContentFile, T> parse) =>
        files.ToDictionary(file => file.Path,
            file => known.TryGetValue(file.Path, out var old) && old.File == file ? old : (file, parse(file)), StringComparer.Ordinal);

    private CheckedPage Check(Page page, Pages pages, FolderChange change) =>
        found.TryGetValue(page.Path, out CheckedPage? old) && ReferenceEquals(old.Page, page) && !old.Needs.Meet(change)
            ? old
            : CheckedPage.Of(page, pages);

    private IEnumerable<Diagnostic> Check(IContentRule rule, Pages pages)
    {
        if (rule is not IGatheringRule gathering) return rule.Check(pages);
        int place = CheckedPage.Gathering.IndexOf(gathering);
        object[] gathered = [.. pages.All.Select(page => found[page.Path].Gathered[place]).OfType<object>()];
        return (concluded[place] = Conclusion.Of(gathering, gathered, concluded[place])).Found;
    }

    private ImmutableArray<Diagnostic> Diagnostics(Pages pages)
    {
        Diagnostic[] first = [.. found.Values.SelectMany(page => page.First), .. Early.SelectMany(rule => Check(rule, pages))];
        HashSet<string> bent = [.. first.Where(each => FrameRules.Contains(each.Name)).Select(each => each.At.Path)];
        IEnumerable<Diagnostic> rest = found.Values.SelectMany(page => page.Rest)
            .Concat(Late.SelectMany(rule => Check(rule, pages))).Where(each => !bent.Contains(each.At.Path));
        return [.. first.Concat(rest).Order()];
    }
}
