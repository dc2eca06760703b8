using System.Collections.Immutable;
using DxAssistant.Knowledge.Content;

namespace DxAssistant.Conversation.Understanding;

/// <summary>
/// Hears that somebody is hurt: words that tell it alone, and words that tell it of a person, though a unit may do the
/// same: "he fell off the ladder".
/// </summary>
/// <remarks>
/// Only a denial right before the word counts: "nobody got hurt", but not "I don't know what to do, he passed out".
/// </remarks>
internal sealed class HarmWords
{
    // So many words may stand between a person and what happened to them.
    private const int Between = 6;

    private readonly ImmutableHashSet<string> _denials;
    private readonly ImmutableHashSet<string> _persons;
    private readonly ImmutableHashSet<string> _saying;
    private readonly ImmutableArray<ImmutableArray<string>> _alone;
    private readonly ImmutableArray<ImmutableArray<string>> _ofPerson;
    private readonly ImmutableArray<ImmutableArray<string>> _ofGas;

    public HarmWords(Library library)
    {
        _denials = [.. UrgentDenials.All, .. library.Language?.Not ?? []];
        _persons = [.. PhraseLists.WordsOf(library.Phrases, "words-person")];
        _saying = [.. PhraseLists.WordsOf(library.Phrases, "words-saying")];
        _alone = Wordings(library, "words-hurt");
        _ofPerson = Wordings(library, "words-hurt-person");
        _ofGas = Wordings(library, "words-gassed");
    }

    /// <summary>Whether a clause tells that somebody is hurt.</summary>
    public bool IsIn(string clause)
    {
        ImmutableArray<string> said = PlainWords.Of(clause);
        return Places(said, _alone).Any(at => !IsDenied(said, at))
            || Places(said, _ofPerson).Any(at => !IsDenied(said, at) && HasPerson(said, at));
    }

    /// <summary>Whether a clause tells that somebody may have breathed gas or smoke.</summary>
    public bool IsOfGas(string clause)
    {
        ImmutableArray<string> said = PlainWords.Of(clause);
        return Places(said, _ofGas).Any(at => !IsDenied(said, at));
    }

    private static ImmutableArray<ImmutableArray<string>> Wordings(Library library, string id) =>
        [.. PhraseLists.Of(library.Phrases, id).Select(PlainWords.Of)];

    private static IEnumerable<int> Places(ImmutableArray<string> said,
        ImmutableArray<ImmutableArray<string>> wordings) =>
        from at in Enumerable.Range(0, said.Length)
        where wordings.Any(words => at + words.Length <= said.Length
            && said.AsSpan(at, words.Length).SequenceEqual(words.AsSpan()))
        select at;

    private bool IsDenied(ImmutableArray<string> said, int at) => said[Math.Max(0, at - 2)..at].Any(_denials.Contains);

    // Who only reports it is not who it happened to: "she says it fell off the wall".
    private bool HasPerson(ImmutableArray<string> said, int at) =>
        Enumerable.Range(Math.Max(0, at - Between), at - Math.Max(0, at - Between))
        .Any(place => _persons.Contains(said[place])
            && !(place + 1 < said.Length && _saying.Contains(said[place + 1])));
}
