using System.Collections.Immutable;

namespace DxAssistant.Knowledge.Content.Model;

/// <summary>A language: how it is recognised, chosen, counted in and read.</summary>
/// <param name="Id">Two letters (ISO 639-1).</param>
/// <param name="Name">The language in itself.</param>
/// <param name="Analyzer">
/// The search analyzer by name; null for a language that is not spoken here, or the main one.
/// </param>
/// <param name="DecimalComma">True when figures are shown with a comma.</param>
/// <param name="SmallWords">Words that hardly stand in another language.</param>
/// <param name="ChosenBy">Whole messages that ask for this language.</param>
/// <param name="Not">Words that deny what follows.</param>
/// <param name="AllIsWell">Words that say a part is sound.</param>
/// <param name="Answer">What a person who writes in a language not spoken here is told; null when it is spoken.</param>
/// <param name="Numbers">Number words and their values.</param>
/// <param name="Readings">
/// What people say about a reading or a display, and what it is called in the main language.
/// </param>
/// <param name="Figures">Words of calculations, and how this language says them.</param>
public sealed record LanguagePage(
    string Id,
    Passage Name,
    bool IsMain,
    string? Analyzer,
    bool DecimalComma,
    ImmutableSortedSet<string> SmallWords,
    ImmutableArray<string> ChosenBy,
    ImmutableArray<string> Not,
    ImmutableArray<string> AllIsWell,
    Passage? Answer,
    ImmutableSortedDictionary<string, double> Numbers,
    ImmutableArray<WordPair> Readings,
    ImmutableArray<WordPair> Figures);
