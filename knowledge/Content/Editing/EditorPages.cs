using System.Collections.Immutable;
using DxAssistant.Knowledge.Content.Incremental;
using DxAssistant.Knowledge.Content.Syntax;

namespace DxAssistant.Knowledge.Content.Editing;

/// <summary>The pages of a folder as an editor asks about them. Not for use from several threads at once.</summary>
public sealed class EditorPages
{
    private readonly IncrementalCompiler compiler = new();
    private ContentFolder folder = ContentFolder.Of([]);
    private Pages pages = Pages.Parse(ContentFolder.Of([]));

    /// <summary>What is wrong with the pages now.</summary>
    public ImmutableArray<Diagnostic> Diagnostics { get; private set; } = [];

    /// <summary>Takes the folder as it is now, unsaved pages included.</summary>
    public void Take(ContentFolder now)
    {
        folder = now;
        Diagnostics = compiler.Compile(now).Diagnostics;
        pages = compiler.Pages!;
    }

    /// <summary>The text of a page, or null.</summary>
    public string? Text(string path) => folder.File(path)?.Text;

    /// <summary>Where what is named at a place is defined; null when nothing is named there.</summary>
    public EditorPlace? Definition(string path, int line, int character) =>
        SpotAt(path, line, character) is { } spot ? new Definitions(pages).Of(spot) : null;

    /// <summary>What a number, word or link at a place means; null when there is nothing to say.</summary>
    public EditorText? Hover(string path, int line, int character) =>
        SpotAt(path, line, character) is { } spot ? new Explanations(pages).Of(spot) : null;

    /// <summary>What can be written at a place.</summary>
    public ImmutableArray<EditorChoice> Choices(string path, int line, int character) =>
        SpotAt(path, line, character) is { } spot ? new Choices(pages).At(spot, line, character) : [];

    /// <summary>Gives the page that is named at a place another id, on every page.</summary>
    /// <param name="problem">Why it cannot be done; null when it can.</param>
    public EditorRename? Rename(string path, int line, int character, string id, out string? problem)
    {
        problem = "there is no id of a page here";
        return SpotAt(path, line, character) is { } spot ? new Renaming(pages).Of(spot, id, out problem) : null;
    }

    private Spot? SpotAt(string path, int line, int character) => Find(path) is not { } page ? null
        : Spot.At(page, EditorRange.Offset(page.Source.Text, line, character));

    private Page? Find(string path) =>
        pages.AtPath(path) ?? pages.Translations.FirstOrDefault(page => page.Path == path);
}
