using System.Collections.Frozen;
using System.Collections.Immutable;
using DxAssistant.Graph.Model;
using DxAssistant.Knowledge.Content;
using DxAssistant.Knowledge.Content.Model;

namespace DxAssistant.Conversation.Understanding;

/// <summary>Tells a complaint from its denial: "no water drips" denies one, "not cooling" makes one.</summary>
/// <remarks>
/// It is denied when what is left without the denying words stands in something that people say who have the trouble,
/// and in nothing that they say with a denial in it.
/// </remarks>
internal sealed class Denials
{
    // Who says more tells more than that something is not so.
    private const int MostWords = 8;
    private const int MostWordsOfPraise = 4;

    private static readonly ImmutableHashSet<string> Idle =
        ["does", "do", "did", "has", "have", "been", "any", "anymore", "more", "longer", "now", "at", "there", "theres",
            "today", "here", "from", "out"];

    private readonly LanguagePage? _language;
    private readonly CommandWords _words;
    private readonly Lazy<FrozenDictionary<SymptomId, ImmutableArray<Saying>>> _said;

    public Denials(Library library, CommandWords words)
    {
        (_language, _words) = (library.Language, words);
        _said = new(() => library.Symptoms.Values.ToFrozenDictionary(
            page => page.Id,
            page => ImmutableArray.CreateRange(page.SaidAs.Prepend(page.Title).Select(said => Read(said.Text)))));
    }

    /// <summary>Whether words say that a trouble is not there.</summary>
    public bool Denies(string text, SymptomId symptom)
    {
        if (PlainWords.Of(text).Length > MostWords || text.Contains('?')
            || !_said.Value.TryGetValue(symptom, out var known))
            return false;
        Saying said = Read(text);
        return !said.Denied.IsEmpty && !said.Words.IsEmpty && known.Any(one => !one.Denies && one.Holds(said))
            && !known.Any(one => one.DeniesTheSame(said));
    }

    /// <summary>Whether words deny some trouble, and make no complaint of another.</summary>
    public bool DeniesAny(string text) => _said.Value.Keys.Any(symptom => Denies(text, symptom))
        && Read(text) is var said && !_said.Value.Values.Any(known => known.Any(one => one.DeniesTheSame(said)));

    /// <summary>Whether words say that something is in order, and no more.</summary>
    public bool Praises(string text) =>
        PlainWords.Of(text) is { Length: > 1 and <= MostWordsOfPraise } && !text.Contains('?') && !Read(text).Denies
            && _words.EndsIn("words-fine", text);

    /// <summary>Whether words say that the trouble is gone, whichever it is.</summary>
    public bool SaysGone(string text) => _words.Means("words-gone", text) || _words.EndsIn("words-gone-at-last", text);

    private Saying Read(string text)
    {
        ImmutableArray<string> telling =
            [.. OptionMatcher.Telling(text, _language).Where(word => !Idle.Contains(word))];
        return new Saying(
            [.. telling.Where(word => !Denies(word))],
            [.. telling.Zip(telling.Skip(1)).Where(pair => Denies(pair.First) && !Denies(pair.Second))
                .Select(pair => pair.Second)],
            telling.Any(Denies));
    }

    private bool Denies(string word) => OptionMatcher.Denies(word, _language);

    /// <summary>Something that is said.</summary>
    /// <param name="Words">Its telling words without those that deny.</param>
    /// <param name="Denied">Those that stand right behind one that denies.</param>
    private sealed record Saying(ImmutableArray<string> Words, ImmutableArray<string> Denied, bool Denies)
    {
        // "dripping" and "drips" are one word: they begin alike, and only endings are left.
        private const int Stem = 4, Ending = 4;

        public bool Holds(Saying other) => other.Words.All(word => Words.Any(known => IsSame(known, word)));

        /// <summary>Whether both deny one thing: "not heating the room" and "it does not heat".</summary>
        public bool DeniesTheSame(Saying other) => Denies
            && (Holds(other) || Denied.Any(known => other.Denied.Any(word => IsSame(known, word))));

        private static bool IsSame(string left, string right)
        {
            int same = left.Zip(right).TakeWhile(pair => pair.First == pair.Second).Count();
            return left == right || (same >= Stem && left.Length - same <= Ending && right.Length - same <= Ending);
        }
    }
}
