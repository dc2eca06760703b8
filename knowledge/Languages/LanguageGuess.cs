using System.Collections.Frozen;
using System.Collections.Immutable;
using DxAssistant.Knowledge.Content;
using DxAssistant.Knowledge.Content.Model;

namespace DxAssistant.Knowledge.Languages;

/// <summary>Tells from a message in which language it is, by words that only one language has.</summary>
/// <remarks>It guesses only to ask: nothing is switched without a yes.</remarks>
public sealed class LanguageGuess
{
    private const int Short = 3;

    private readonly ImmutableArray<(string Id, FrozenSet<string> Words)> others;
    private readonly FrozenSet<string> main;
    private readonly FrozenDictionary<string, FrozenSet<string>> small;

    public LanguageGuess(Library library)
    {
        main = Known(library, library.Language);
        small = library.Languages.Values.ToFrozenDictionary(page => page.Id,
            page => page.SmallWords.SelectMany(PlainLetters.Words).ToFrozenSet(StringComparer.Ordinal));
        others = library.Language is null ? [] :
        [
            .. library.Languages.Values.Where(page => !page.IsMain)
                .Select(page =>
                    (page.Id, Known(library.Translations.TryGetValue(page.Id, out Library? said) ? said : null, page))),
        ];
    }

    /// <summary>The tag of a language other than the main one, or null when nothing points to one.</summary>
    public string? Of(string text)
    {
        IReadOnlyList<string> said = PlainLetters.Words(text.Length > 400 ? text[..400] : text);
        (string? best, int most) = (null, 0);
        foreach ((string id, FrozenSet<string> words) in others)
        {
            int only = said.Count(word => words.Contains(word) && !main.Contains(word));
            int against = said.Count(word => main.Contains(word) && !words.Contains(word));
            bool tells = only > against && (only > 1 || (against == 0 && said.Count <= Short));
            if (tells && only > most) (best, most) = (id, only);
        }

        return best;
    }

    /// <summary>
    /// Whether a whole message in the middle of a case is in one language rather than in that of the case.
    /// </summary>
    public bool IsIn(string text, string language, string own)
    {
        IReadOnlyList<string> said = PlainLetters.Words(text.Length > 400 ? text[..400] : text);
        (FrozenSet<string> theirs, FrozenSet<string> ours) = (WordsOf(language), WordsOf(own));
        int only = said.Count(word => theirs.Contains(word) && !ours.Contains(word));
        int against = said.Count(word => ours.Contains(word) && !theirs.Contains(word));
        return said.Count == 1 ? only == 1 && said[0].Length > Short && small[language].Contains(said[0])
            : only > 2 * against && (only > 1 || said.Count <= Short);
    }

    private FrozenSet<string> WordsOf(string language) =>
        others.Where(other => other.Id == language).Select(other => other.Words).FirstOrDefault(main);

    private static FrozenSet<string> Known(Library? library, LanguagePage? page)
    {
        IEnumerable<Passage> passages = library is null ? [] :
        [
            .. library.Symptoms.Values.SelectMany(symptom => symptom.SaidAs.Add(symptom.Title)),
            .. library.Faults.Values.SelectMany(fault => fault.SaidAs.Add(fault.Title)),
            // What is off the topic may be said in any language.
            .. library.Refusals.Values.Where(refusal => refusal.Unsafe).SelectMany(refusal => refusal.SaidAs),
        ];
        string? own = page is null || page.IsMain ? null : page.Id;
        return passages.Where(passage => passage.Place.Language == own)
            .SelectMany(passage => PlainLetters.Words(passage.Text))
            .Concat((page?.SmallWords ?? []).SelectMany(PlainLetters.Words))
            .Where(word => word.Length > 1 && !char.IsDigit(word[0])).ToFrozenSet(StringComparer.Ordinal);
    }
}
