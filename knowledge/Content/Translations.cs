using System.Collections;
using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;

namespace DxAssistant.Knowledge.Content;

/// <summary>A library in its other languages, by tag, sorted. Each is made once, when it is first asked for.</summary>
public sealed class Translations : IReadOnlyDictionary<string, Library>
{
    private readonly Lock making = new();
    private readonly ImmutableSortedDictionary<string, Lazy<Library>> made;

    /// <param name="make">Makes that of a language; never called twice at a time.</param>
    internal Translations(IEnumerable<string> languages, Func<string, Library> make) =>
        made = languages.ToImmutableSortedDictionary(tag => tag, tag => new Lazy<Library>(() => Make(make, tag)), StringComparer.Ordinal);

    /// <summary>No other language.</summary>
    public static Translations None { get; } = new([], tag => throw new KeyNotFoundException(tag));

    /// <inheritdoc/>
    public int Count => made.Count;

    /// <inheritdoc/>
    public IEnumerable<string> Keys => made.Keys;

    /// <inheritdoc/>
    public IEnumerable<Library> Values => made.Values.Select(library => library.Value);

    /// <inheritdoc/>
    public Library this[string key] => made[key].Value;

    /// <inheritdoc/>
    public bool ContainsKey(string key) => made.ContainsKey(key);

    /// <inheritdoc/>
    public bool TryGetValue(string key, [MaybeNullWhen(false)] out Library value)
    {
        value = made.GetValueOrDefault(key)?.Value;
        return value is not null;
    }

    /// <inheritdoc/>
    public IEnumerator<KeyValuePair<string, Library>> GetEnumerator() =>
        made.Select(language => KeyValuePair.Create(language.Key, language.Value.Value)).GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();

    private Library Make(Func<string, Library> make, string tag)
    {
        lock (making) return make(tag);
    }

    /// <summary>Makes all now.</summary>
    internal Translations Made()
    {
        foreach (Lazy<Library> library in made.Values) _ = library.Value;
        return this;
    }
}
