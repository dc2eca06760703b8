using System.Collections.Immutable;

namespace DxAssistant.Knowledge.Content.Model;

/// <summary>The phrase file: everything the assistant says that is not on another page.</summary>
/// <param name="Templates">By id; slots stand in braces.</param>
public sealed record PhraseBook(ImmutableSortedDictionary<string, Passage> Templates)
{
    /// <summary>The template of a phrase.</summary>
    /// <exception cref="KeyNotFoundException">There is no such phrase; <see cref="Missing"/> finds that at the
    /// start.</exception>
    public string Template(string id) => Templates[id].Text;

    /// <summary>Those of the ids that have no phrase.</summary>
    public ImmutableArray<string> Missing(IEnumerable<string> ids) => [.. ids.Where(id => !Templates.ContainsKey(id))];
}
