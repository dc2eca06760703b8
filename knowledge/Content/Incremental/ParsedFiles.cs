using System.Collections.Immutable;

namespace DxAssistant.Knowledge.Content.Incremental;

/// <summary>Files of a folder and what was parsed of each, in the order of their paths.</summary>
internal sealed class ParsedFiles<T> where T : class
{
    private readonly Func<ContentFile, T> parse;
    private ImmutableArray<ContentFile> files = [];

    public ParsedFiles(Func<ContentFile, T> parse) => this.parse = parse;

    /// <summary>In the order of the files.</summary>
    public ImmutableArray<T> Parsed { get; private set; } = [];

    /// <summary>Parses what is not known yet.</summary>
    /// <returns>What came, went or changed.</returns>
    public List<(T? Old, T? New)> Take(ImmutableArray<ContentFile> now)
    {
        List<(T? Old, T? New)> changes = SamePaths(now) ? Edited(now) : Anew(now);
        files = now;
        return changes;
    }

    private bool SamePaths(ImmutableArray<ContentFile> now)
    {
        if (now.Length != files.Length) return false;
        for (int i = 0; i < now.Length; i++)
            if (!ReferenceEquals(now[i], files[i]) && now[i].Path != files[i].Path) return false;
        return true;
    }

    private List<(T? Old, T? New)> Edited(ImmutableArray<ContentFile> now)
    {
        List<(T? Old, T? New)> changes = [];
        ImmutableArray<T>.Builder edited = Parsed.ToBuilder();
        for (int i = 0; i < now.Length; i++)
        {
            if (now[i] == files[i]) continue;
            edited[i] = parse(now[i]);
            changes.Add((Parsed[i], edited[i]));
        }

        Parsed = edited.ToImmutable();
        return changes;
    }

    private List<(T? Old, T? New)> Anew(ImmutableArray<ContentFile> now)
    {
        List<(T? Old, T? New)> changes = [];
        Dictionary<string, (ContentFile File, T Parsed)> known = new(StringComparer.Ordinal);
        for (int i = 0; i < files.Length; i++) known.Add(files[i].Path, (files[i], Parsed[i]));
        Parsed = [.. now.Select(file => Again(file, known, changes))];
        changes.AddRange(known.Values.Select(gone => ((T?)gone.Parsed, (T?)null)));
        return changes;
    }

    private T Again(ContentFile file, Dictionary<string, (ContentFile File, T Parsed)> known,
        List<(T? Old, T? New)> changes)
    {
        if (known.Remove(file.Path, out var old) && old.File == file) return old.Parsed;
        T made = parse(file);
        changes.Add((old.Parsed, made));
        return made;
    }
}
