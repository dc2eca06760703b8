using System.Collections.Frozen;
using System.Collections.Immutable;
using DxAssistant.Conversation.Told;
using DxAssistant.Graph.Model;
using DxAssistant.Knowledge.Content;
using DxAssistant.Knowledge.Content.Model;

namespace DxAssistant.Conversation.Understanding.Whole;

/// <summary>
/// What the pages say people say, by its words in any order: a wording fits when exactly its words stand together.
/// </summary>
internal sealed class Wordings
{
    private readonly FrozenDictionary<string, ImmutableArray<ToldThing>> _things;
    private readonly FrozenDictionary<string, ImmutableArray<CheckId>> _measured;

    public Wordings(Library library, WordLists words)
    {
        _things = Table(Outcomes(library, words).Concat(Repairs(library)).Concat(Others(library, words)), words);
        _measured = Table(
            from page in library.Checks.Values where !page.Readings.IsEmpty
            from name in page.SaidAs
            from wording in OfPressures(name.Text, words)
            select (wording, page.Id), words);
        Longest = _things.Keys.Concat(_measured.Keys).Select(key => key.Count(sign => sign == ' ') + 1)
            .DefaultIfEmpty(0).Max();
    }

    /// <summary>The most words that a wording has.</summary>
    public int Longest { get; }

    /// <summary>What these words tell; empty when nothing, more than one when they can mean several things.</summary>
    public ImmutableArray<ToldThing> Find(ReadOnlySpan<string> said) => _things.GetValueOrDefault(Key(said), []);

    /// <summary>The checks whose readings these words name.</summary>
    public ImmutableArray<CheckId> FindMeasured(ReadOnlySpan<string> said) =>
        _measured.GetValueOrDefault(Key(said), []);

    // What is left of "no display" is a mere denial, and tells nothing.
    private static FrozenDictionary<string, ImmutableArray<T>> Table<T>(IEnumerable<(string Wording, T Means)> entries,
        WordLists words) =>
        entries.Select(entry => (Key: Key(words.Read(entry.Wording).AsSpan()), entry.Means))
            .Where(entry => entry.Key is not ("" or WordLists.Not))
            .GroupBy(entry => entry.Key, entry => entry.Means, StringComparer.Ordinal)
            .ToFrozenDictionary(same => same.Key, same => same.Distinct().ToImmutableArray(), StringComparer.Ordinal);

    private static IEnumerable<(string, ToldThing)> Outcomes(Library library, WordLists words) =>
        from page in library.Checks.Values
        from outcome in page.Outcomes
        from said in outcome.SaidAs
        from wording in OfPressures(said, words)
        select (wording, (ToldThing)new ToldThing.Outcome(page.Id.Value, outcome.Id.Value, false));

    // "The head pressures are high" is said of one pressure too.
    private static IEnumerable<string> OfPressures(string wording, WordLists words)
    {
        string[] said = wording.Split(' ');
        int at = Array.IndexOf(said, words.Pressure);
        return at < 0 || said.Length < 2 ? [wording]
            : [wording, string.Join(' ', said.Select((word, place) => place == at ? words.Pressures : word))];
    }

    private static IEnumerable<(string, ToldThing)> Repairs(Library library) =>
        from page in library.Repairs.Values
        from wording in page.SaidAs
        select (wording.Text, (ToldThing)new ToldThing.Tried(page.Id.Value));

    private static IEnumerable<(string, ToldThing)> Others(Library library, WordLists words) =>
    [
        .. library.Symptoms.Values.SelectMany(page => page.SaidAs.Append(page.Title)
            .Where(wording => !words.NamesACode(wording.Text))
            .Select(wording => (wording.Text, (ToldThing)new ToldThing.Symptom(page.Id.Value, 1, false)))),
        .. library.Series.Values.SelectMany(page => page.SaidAs.Append(page.Title)
            .Select(wording => (wording.Text, (ToldThing)new ToldThing.Unit(page.Id)))),
        .. library.Roles.SelectMany(page => page.SaidAs
            .Select(wording => (wording, (ToldThing)new ToldThing.AtUnit(page.Role.Id)))),
        .. ModeWords.Of(library.Phrases),
    ];

    private static string Key(ReadOnlySpan<string> said)
    {
        string[] sorted = said.ToArray();
        Array.Sort(sorted, StringComparer.Ordinal);
        return string.Join(' ', sorted);
    }
}
