using System.Collections.Immutable;
using System.Diagnostics.CodeAnalysis;

namespace DxAssistant.Knowledge.Content;

/// <summary>A library in its other languages, by tag, sorted. Each is made once, when it is first asked for.</summary>
public sealed class Translations
{
    private readonly Lock making = new();
    private readonly ImmutableSortedDictionary<string, Lazy<Library>> made;

    /// <param name="make">Makes that of a language; never called twice at a time.</param>
    internal Translations(IEnumerable<string> languages, Func<string, Library> make) =>
        made = languages.ToImmutableSortedDictionary(tag => tag, tag => new Lazy<Library>(() => Make(make, tag)),
            StringComparer.Ordinal);

    /// <summary>No other language.</summary>
    public static Translations None { get; } = new([], tag => throw new KeyNotFoundException(tag));

    /// <summary>The tags of the languages.</summary>
    public IEnumerable<string> Keys => made.Keys;

    /// <summary>The library in every other language.</summary>
    public IEnumerable<Library> Values => made.Values.Select(library => library.Value);

    /// <summary>The library in one language.</summary>
    /// <exception cref="KeyNotFoundException">The pages are not in it.</exception>
    public Library this[string language] => made[language].Value;

    /// <summary>The library in one language, if the pages are in it.</summary>
    public bool TryGetValue(string language, [NotNullWhen(true)] out Library? library) =>
        (library = made.GetValueOrDefault(language)?.Value) is not null;

    /// <summary>Makes all now.</summary>
    internal Translations Made()
    {
        foreach (Lazy<Library> library in made.Values) _ = library.Value;
        return this;
    }

    private Library Make(Func<string, Library> make, string tag)
    {
        lock (making) return make(tag);
    }
}
