using System.Collections.Immutable;
using DxAssistant.Knowledge.Content.Syntax;

namespace DxAssistant.Knowledge.Content.Building;

/// <summary>Parts of a library that are made again only when their page changes.</summary>
/// <remarks>A part depends on its page and on the pages that every part may refer to; all rules have passed, so that of
/// any other page only the id counts, which is that of its file.</remarks>
internal sealed class KeptParts
{
    private readonly Dictionary<(string Language, string What), (ImmutableArray<Page> Pages, object Made)> made = [];
    private readonly Dictionary<(Page Page, string What), object> nodes = [];
    private readonly Dictionary<string, (ImmutableArray<Page> From, object Made)> wholes = [];
    private ImmutableArray<object> shared = [];

    /// <summary>The graph of last time.</summary>
    public KeptGraph Graph { get; } = new();

    /// <summary>The mark of the folder.</summary>
    public FolderMark Mark { get; } = new();

    /// <summary>Begins a library; forgets everything when a page that parts refer to is another.</summary>
    public void Begin(Pages pages)
    {
        ImmutableArray<object> now =
        [
            .. new[] { PageKind.Sources, PageKind.Caution, PageKind.Roles, PageKind.Words, PageKind.Glossary }
                .SelectMany(kind => pages.OfKind(kind)), .. pages.Pictures, .. pages.Translations,
        ];
        if (!now.SequenceEqual(shared, ReferenceEqualityComparer.Instance))
        {
            made.Clear();
            nodes.Clear();
            wholes.Clear();
        }

        shared = now;
    }

    /// <summary>The parts of some pages by id: those of unchanged pages are the ones of last time.</summary>
    public ImmutableSortedDictionary<TId, T> Of<TId, T>(
        string language, string what, ImmutableArray<Page> pages, Func<Page, T> make, Func<T, TId> id,
        IComparer<TId>? order)
        where TId : notnull
    {
        ImmutableSortedDictionary<TId, T> all;
        if (made.TryGetValue((language, what), out var old) && SamePaths(old.Pages, pages))
        {
            all = (ImmutableSortedDictionary<TId, T>)old.Made;
            for (int i = 0; i < pages.Length; i++)
            {
                if (ReferenceEquals(old.Pages[i], pages[i])) continue;
                T part = make(pages[i]);
                all = all.SetItem(id(part), part);
            }
        }
        else
        {
            all = pages.Select(make).ToImmutableSortedDictionary(id, part => part, order);
        }

        made[(language, what)] = (pages, all);
        return all;
    }

    /// <summary>What is made of some pages together, that of last time when all of them are the same.</summary>
    public T Whole<T>(string what, ImmutableArray<Page> from, Func<T> make) where T : notnull
    {
        if (!wholes.TryGetValue(what, out var old) || !old.From.AsSpan().SequenceEqual(from.AsSpan(), null))
            wholes[what] = old = (from, make());
        return (T)old.Made;
    }

    /// <summary>A node of the graph, the one of last time when its page is the same.</summary>
    public T Node<T>(Page page, string what, Func<T> make) where T : notnull
    {
        if (!nodes.TryGetValue((page, what), out object? node)) nodes[(page, what)] = node = make();
        return (T)node;
    }

    /// <summary>Keeps another node of a page.</summary>
    public T Put<T>(Page page, string what, T node) where T : notnull
    {
        nodes[(page, what)] = node;
        return node;
    }

    /// <summary>Forgets the nodes of pages that are gone.</summary>
    public void Tidy(Pages pages)
    {
        if (nodes.Count < 4 * pages.All.Length + 1000) return;
        HashSet<Page> known = [.. pages.All];
        foreach (var key in nodes.Keys.Where(key => !known.Contains(key.Page)).ToList()) nodes.Remove(key);
    }

    private static bool SamePaths(ImmutableArray<Page> one, ImmutableArray<Page> other)
    {
        if (one.Length != other.Length) return false;
        for (int i = 0; i < one.Length; i++) if (one[i].Path != other[i].Path) return false;
        return true;
    }
}
