using System.Collections.Immutable;
using DxAssistant.Knowledge.Content.Constructs;
using DxAssistant.Knowledge.Content.Incremental;
using DxAssistant.Knowledge.Content.Languages;
using DxAssistant.Knowledge.Content.Shapes;
using DxAssistant.Knowledge.Content.Syntax;

namespace DxAssistant.Knowledge.Content;

/// <summary>All parsed pages of a folder, and how to get from one to another.</summary>
internal sealed class Pages
{
    private readonly Dictionary<string, Page> byPath;
    private readonly Dictionary<(PageKind, string), Page> byId = [];
    private readonly Dictionary<PageKind, ImmutableArray<Page>> byKind;
    private readonly Dictionary<PageKind, HashSet<string>> ids = [];
    private readonly Dictionary<string, HashSet<string>> anchors = [];
    private readonly ImmutableArray<PictureFile> pictures = [];
    private readonly ImmutableSortedDictionary<string, double> likelihoods =
        ImmutableSortedDictionary<string, double>.Empty;
    private readonly ImmutableSortedDictionary<string, double> frequencies =
        ImmutableSortedDictionary<string, double>.Empty;
    private readonly Pages? whole;
    private readonly PageNeeds? needs;

    private Pages(Pages whole, Page page, PageNeeds needs)
    {
        (this.whole, this.needs) = (whole, needs);
        All = [page];
        Translations = [];
        byPath = whole.byPath;
        byKind = page.Kind is { } kind ? new() { [kind] = All } : [];
    }

    private Pages(ImmutableArray<Page> all, ImmutableArray<Page> translations, ImmutableArray<PictureFile> pictures)
    {
        Translations = translations;
        All = all;
        this.pictures = pictures;
        byPath = all.ToDictionary(page => page.Path, StringComparer.Ordinal);
        byKind = all.Where(page => page.Kind is not null).GroupBy(page => page.Kind!.Value)
            .ToDictionary(same => same.Key, same => same.ToImmutableArray());
        // Of two pages with one id, the one in its right place is the page.
        foreach (Page page in all.Where(IsInPlace)) byId.TryAdd((page.Kind!.Value, page.Id), page);
        foreach (Page page in all.Where(page => page.Kind is not null)) byId.TryAdd((page.Kind!.Value, page.Id), page);
        likelihoods = WordTable.Read(Single(PageKind.Words)?.Section("Likelihoods")?.Table);
        frequencies = WordTable.Read(Single(PageKind.Words)?.Section("Frequencies")?.Table);
        Prices = WordTable.Read(Single(PageKind.Words)?.Section("Prices")?.Table);
    }

    private Pages(Pages before, IReadOnlyList<Page> edited)
    {
        (All, Translations, pictures) = (Put(before.All, edited), Put(before.Translations, edited), before.pictures);
        byPath = new(before.byPath, StringComparer.Ordinal);
        byKind = new(before.byKind);
        byId = new(before.byId);
        foreach (Page page in edited.Where(page => page.Language is null)) Put(page, before);
        bool sameWords = edited.All(page => page.Kind != PageKind.Words);
        likelihoods = sameWords
            ? before.likelihoods
            : WordTable.Read(Single(PageKind.Words)?.Section("Likelihoods")?.Table);
        frequencies = sameWords
            ? before.frequencies
            : WordTable.Read(Single(PageKind.Words)?.Section("Frequencies")?.Table);
        Prices = sameWords ? before.Prices : WordTable.Read(Single(PageKind.Words)?.Section("Prices")?.Table);
    }

    /// <summary>Sorted by path.</summary>
    public ImmutableArray<Page> All { get; }

    /// <summary>The pictures of the folder, sorted by path.</summary>
    public ImmutableArray<PictureFile> Pictures => whole is null ? pictures : Look(needs!.Pictures, whole.pictures);

    /// <summary>Pages that say another page in another language.</summary>
    public ImmutableArray<Page> Translations { get; }

    /// <summary>All pages, then their translations.</summary>
    public IEnumerable<Page> Written => All.Concat(Translations);

    /// <summary>What the likelihood words mean; empty when there is no such table.</summary>
    public ImmutableSortedDictionary<string, double> Likelihoods =>
        whole is null ? likelihoods : Look(() => needs!.Kind(PageKind.Words), whole.likelihoods);

    /// <summary>What the frequency words mean; empty when there is no such table.</summary>
    public ImmutableSortedDictionary<string, double> Frequencies =>
        whole is null ? frequencies : Look(() => needs!.Kind(PageKind.Words), whole.frequencies);

    /// <summary>What is priced in minutes although it takes none; empty when there is no such table.</summary>
    public ImmutableSortedDictionary<string, double> Prices { get; } = ImmutableSortedDictionary<string, double>.Empty;

    public static Pages Parse(ContentFolder folder)
    {
        return Of(folder.Pages.Select(PageParser.Parse), [.. folder.Pictures.Select(PictureParser.Parse)]);
    }

    /// <summary>These pages and those of other languages.</summary>
    public Pages With(IEnumerable<ContentFile> translations) =>
        new(All, [.. translations.Select(PageParser.Parse)], Pictures);

    /// <summary>The pages and pictures of a folder that were parsed already, sorted by path.</summary>
    public static Pages Of(IEnumerable<Page> parsed, ImmutableArray<PictureFile> pictures)
    {
        ILookup<bool, Page> byLanguage = parsed.ToLookup(page => page.Language is null);
        return new Pages([.. byLanguage[true]], [.. byLanguage[false]], pictures);
    }

    /// <summary>
    /// These pages with some in place of those that stood at their paths, each of the same kind and id as that.
    /// </summary>
    public Pages Edited(IReadOnlyList<Page> edited) => edited.Count == 0 ? this : new Pages(this, edited);

    private void Put(Page page, Pages before)
    {
        Page old = before.byPath[page.Path];
        byPath[page.Path] = page;
        if (page.Kind is not { } kind) return;
        byKind[kind] = byKind[kind].Replace(old, page);
        if (byId[(kind, page.Id)] == old) byId[(kind, page.Id)] = page;
    }

    private static ImmutableArray<Page> Put(ImmutableArray<Page> among, IReadOnlyList<Page> edited)
    {
        ImmutableArray<Page>.Builder put = among.ToBuilder();
        foreach (Page page in edited)
            if (Place(among, page.Path) is >= 0 and int place) put[place] = page;
        return put.ToImmutable();
    }

    private static int Place(ImmutableArray<Page> sorted, string path)
    {
        int low = 0;
        int high = sorted.Length - 1;
        while (low <= high)
        {
            int middle = (low + high) / 2;
            int order = string.CompareOrdinal(sorted[middle].Path, path);
            if (order == 0) return middle;
            if (order < 0) low = middle + 1;
            else high = middle - 1;
        }

        return -1;
    }

    /// <summary>One page as if it were the only one; the others can only be looked up, which is noted.</summary>
    public Pages Focus(Page page, PageNeeds noted) => new(this, page, noted);

    /// <summary>The pages as they read in another language; what has no text in it stands as it is.</summary>
    public Pages In(string language)
    {
        Dictionary<string, Page> said = Translations.Where(page => page.Language == language)
            .ToDictionary(page => LanguageOfPath.MainOf(page.Path), StringComparer.Ordinal);
        return new Pages(
            [.. All.Select(page => said.TryGetValue(page.Path, out Page? other) ? MergedPage.Of(page, other) : page)],
            Translations, Pictures);
    }

    /// <summary>True when two pages have the same kind and id.</summary>
    public bool HaveAnIdTwice => byId.Count < All.Count(page => page.Kind is not null);

    public ImmutableArray<Page> OfKind(PageKind kind) => byKind.GetValueOrDefault(kind, []);

    /// <summary>All pages of a kind, whatever page is looked at.</summary>
    public ImmutableArray<Page> EveryOfKind(PageKind kind) =>
        whole is null ? OfKind(kind) : Look(() => needs!.Kind(kind), whole.OfKind(kind));

    /// <summary>The page of a kind that has only one.</summary>
    public Page? Single(PageKind kind) => EveryOfKind(kind).FirstOrDefault();

    public Page? AtPath(string path) =>
        whole is null ? byPath.GetValueOrDefault(path) : Look(() => needs!.Path(path), whole.AtPath(path));

    public Page? WithId(PageKind kind, string id) =>
        whole is null ? byId.GetValueOrDefault((kind, id)) : Look(needs!.Ids, whole.WithId(kind, id));

    /// <summary>The page that a link on <paramref name="from"/> means, or null.</summary>
    public Page? Target(Page from, PageLink? link) =>
        link is { LeadsOutside: false } && link.PathFrom(from.Path) is { } path ? AtPath(path) : null;

    /// <summary>The page of one kind that a link means, or null.</summary>
    public Page? Target(Page from, PageLink? link, PageKind kind) =>
        Target(from, link) is { } page && page.Kind == kind ? page : null;

    /// <summary>The file of a picture that stands on a page, or null.</summary>
    public PictureFile? Picture(Page from, PageLink picture) =>
        picture is { LeadsOutside: false } && picture.PathFrom(from.Path) is { } path
            ? Pictures.FirstOrDefault(file => file.Path == path)
            : null;

    /// <summary>True when a page of the kind could not be read or lacks a part, so that nobody knows all its kind
    /// says.</summary>
    public bool Lacks(PageKind kind, Func<Page, bool> hasPart) =>
        UnreadIds(kind).Any() || !EveryOfKind(kind).All(hasPart);

    /// <summary>The page that a broken link was probably meant for, or null.</summary>
    public Page? Meant(Page from, PageLink link)
    {
        needs?.Ids();
        if (link.LeadsOutside || link.PathFrom(from.Path) is not { } path || path.Length == 0)
        {
            return null;
        }

        string file = "/" + path.Split('/')[^1];
        string? near = byPath.Keys.Where(known => ("/" + known).EndsWith(file, StringComparison.Ordinal))
            .Min(StringComparer.Ordinal)
            ?? NearestWord.Find(path, byPath.Keys);
        return near is null ? null : byPath[near];
    }

    /// <summary>True when the page is the only one of its file name, or the only one whose path is near.</summary>
    public bool IsSurelyMeant(Page from, PageLink link, Page meant)
    {
        needs?.Ids();
        string path = link.PathFrom(from.Path) ?? "";
        string file = "/" + path.Split('/')[^1];
        int named = byPath.Keys.Count(known => ("/" + known).EndsWith(file, StringComparison.Ordinal));
        return named == 1 || (named == 0 && NearestWord.Sure(path, byPath.Keys) == meant.Path);
    }

    /// <summary>
    /// The paths that the broken links of a page were probably meant for: what stands there is not blamed for being
    /// mentioned nowhere.
    /// </summary>
    public IEnumerable<string> MeantOn(Page page)
    {
        for (int i = 0; i < page.Links.Length; i++)
            if (!page.Links[i].LeadsOutside && (page.LinkedPaths[i] is not { } path || AtPath(path) is null)
                && Meant(page, page.Links[i]) is { } meant) yield return meant.Path;
    }

    /// <summary>False when the page that lists the ids of a kind is itself missing or unreadable.</summary>
    public bool Knows(PageKind kind) => kind != PageKind.Roles || RoleIds.Any();

    /// <summary>The ids of a kind. A page that could not be read counts by its file name, so that it is blamed once
    /// only.</summary>
    public IReadOnlySet<string> Ids(PageKind kind)
    {
        if (whole is not null)
        {
            needs!.Ids();
            if (kind == PageKind.Roles) needs.Kind(kind);
            return whole.Ids(kind);
        }

        if (!ids.TryGetValue(kind, out HashSet<string>? known))
        {
            known = [.. kind == PageKind.Roles ? RoleIds : OfKind(kind).Select(page => page.Id)
                .Concat(UnreadIds(kind))];
            ids.Add(kind, known);
        }

        return known;
    }

    /// <summary>The likelihood that a word or a number stands for, or null when it stands for none.</summary>
    public double? Likelihood(string text) =>
        Likelihoods.TryGetValue(text, out double value) ? value
        : Number.Read(text) is > 0 and < 1 and double number ? number
        : null;

    /// <summary>True when the page has a heading with this anchor.</summary>
    public bool HasAnchor(Page page, string anchor)
    {
        if (whole is not null) return whole.HasAnchor(page, anchor);
        if (!anchors.TryGetValue(page.Path, out HashSet<string>? known))
        {
            known = [.. Anchors(page)];
            anchors.Add(page.Path, known);
        }

        return known.Contains(anchor);
    }

    public static IEnumerable<string> Anchors(Page page) =>
        page.Sections.Prepend(page.Title).OfType<Section>().Select(section => Slug.Of(section.Name));

    private IEnumerable<string> RoleIds =>
        Single(PageKind.Roles)?.Section("Roles")?.Table is { } table
            ? table.Rows.Select(row => row.Cell(table.Column("Role"))?.Text ?? "").Where(id => id.Length > 0)
            : [];

    private IEnumerable<string> UnreadIds(PageKind kind) => PageShapes.Of(kind).Folder is { } folder
        ? (whole ?? this).All.Where(page => page.Kind is null
            && page.Path.StartsWith(folder + "/", StringComparison.Ordinal))
            .Select(page => page.FileId)
        : [];

    private static bool IsInPlace(Page page) =>
        page.Kind is { } kind && PageShapes.Of(kind).IsPathOf(page.Path, page.Id);

    private static T Look<T>(Action note, T found)
    {
        note();
        return found;
    }
}
