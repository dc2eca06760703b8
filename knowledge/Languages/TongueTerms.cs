using System.Collections.Frozen;
using System.Collections.Immutable;
using DxAssistant.Knowledge.Content.Model;
using Lucene.Net.Analysis;
using Lucene.Net.Analysis.TokenAttributes;

namespace DxAssistant.Knowledge.Languages;

/// <summary>
/// The telling terms of a text: stems without accents, concepts of the glossary, and what is denied marked so.
/// </summary>
internal sealed class TongueTerms
{
    private const string Denied = "not ";
    private const int Reach = 3;
    private static readonly char[] Ends = [',', ';', '.', ':', '!', '?', '\n'];

    private readonly Analyzer analyzer;
    private readonly FrozenSet<string> small;
    private readonly FrozenSet<string> denials;
    private readonly ImmutableArray<string> sound;
    private readonly ImmutableArray<(string Words, string Concept)> concepts;

    public TongueTerms(LanguagePage page, ImmutableArray<GlossaryEntry> glossary)
    {
        analyzer = Analyzers.Named(page.Analyzer!);
        small = page.SmallWords.SelectMany(PlainLetters.Words).ToFrozenSet(StringComparer.Ordinal);
        denials = page.Not.SelectMany(PlainLetters.Words).ToFrozenSet(StringComparer.Ordinal);
        sound = [.. page.AllIsWell.Select(Joined)];
        concepts = [.. glossary.SelectMany(entry => entry.AlsoSaidAs.Concat(entry.OftenMisspelt)
                .Select(words => (Joined(words), Joined(entry.Concept))))
            .Where(pair => pair.Item1 != pair.Item2).OrderByDescending(pair => pair.Item1.Length)
            .ThenBy(pair => pair.Item1, StringComparer.Ordinal)];
    }

    /// <summary>The terms of a message; a clause that says a part is sound tells nothing of what is wrong.</summary>
    public ImmutableArray<string> Of(string text) =>
        [.. Clauses(text).Where(clause => !IsSound(clause)).SelectMany(clause => Terms(clause))
            .Distinct(StringComparer.Ordinal)];

    /// <summary>The terms of each clause, denied or not.</summary>
    public IEnumerable<ImmutableArray<string>> ByClause(string text) => Clauses(text).Select(clause => Terms(clause));

    private static IEnumerable<string> Clauses(string text) => (text.Length > 4_000 ? text[..4_000] : text).Split(Ends)
        .Select(Joined).Where(clause => clause.Length > 0);

    private bool IsSound(string clause) =>
        sound.Any(words => Holds(clause, words)) && !clause.Split(' ').Any(denials.Contains);

    private ImmutableArray<string> Terms(string clause)
    {
        var terms = ImmutableArray.CreateBuilder<string>();
        int denied = -1, at = 0;
        foreach (string word in WithConcepts(clause).Split(' '))
        {
            at++;
            if (denials.Contains(word)) denied = at;
            else if (!small.Contains(word))
            {
                terms.Add(denied >= 0 && at - denied <= Reach ? Denied + Stem(word) : Stem(word));
                denied = -1;
            }
        }

        return terms.ToImmutable();
    }

    // Concepts of several words become one word.
    private string WithConcepts(string clause)
    {
        string said = $" {clause} ";
        foreach ((string words, string concept) in concepts)
            said = said.Replace($" {words} ", $" {concept} ", StringComparison.Ordinal);
        return said.Trim();
    }

    private string Stem(string word)
    {
        using TokenStream stream = analyzer.GetTokenStream("text", word);
        ICharTermAttribute term = stream.AddAttribute<ICharTermAttribute>();
        stream.Reset();
        string stem = stream.IncrementToken() ? term.ToString() : word;
        stream.End();
        return string.Concat(stem.Select(PlainLetters.Of));
    }

    private static string Joined(string text) => string.Join(' ', PlainLetters.Words(text));

    private static bool Holds(string clause, string words) =>
        $" {clause} ".Contains($" {words} ", StringComparison.Ordinal);
}
