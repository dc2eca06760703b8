using System.Collections.Immutable;
using DxAssistant.Conversation.Speaking;
using DxAssistant.Knowledge.Content.Model;

namespace DxAssistant.Conversation.Understanding.Whole;

/// <summary>Lists of words in the phrase file that mean one thing, longest first.</summary>
internal sealed class WordLists(PhraseBook phrases)
{
    private readonly ImmutableArray<(string Mark, ImmutableArray<string> Run)> _runs =
    [
        .. Marks.SelectMany(mark => phrases.Template(mark.Phrase).Split(',')
                .Select(words => (mark.Mark, Run: PlainWords.Of(words))))
            .Where(entry => !entry.Run.IsEmpty)
            .OrderByDescending(entry => entry.Run.Length)
            .ThenBy(entry => string.Join(' ', entry.Run), StringComparer.Ordinal),
    ];

    /// <summary>The mark of words said with doubt.</summary>
    public const string Doubt = "~doubt";

    /// <summary>The mark of words for what comes and goes.</summary>
    public const string Sometimes = "~sometimes";

    /// <summary>The mark of words for a part that was changed.</summary>
    public const string Replaced = "~replaced";

    /// <summary>The mark of words that deny.</summary>
    public const string Not = "not";

    private const string Beside = "";

    private const string Code = "~code";

    private static readonly ImmutableArray<(string Phrase, string Mark)> Marks =
    [
        ("words-doubt", Doubt), ("words-sometimes", Sometimes), ("words-replaced", Replaced), ("words-fine", "~fine"),
        ("words-not", Not), ("words-beside", Beside), ("words-code", Code),
    ];

    /// <summary>The phrases that are such lists.</summary>
    public static ImmutableArray<string> Ids { get; } = [.. Marks.Select(mark => mark.Phrase)];

    /// <summary>The words for what a unit of pressure measures, for one and for many.</summary>
    private readonly ImmutableArray<string> _pressure = [.. PhraseLists.Of(phrases, "words-pressure")];

    /// <summary>The word for what a unit of pressure measures.</summary>
    public string Pressure => _pressure[0];

    /// <summary>The words of a clause, those of a list replaced by its mark, those that say nothing left out.</summary>
    public ImmutableArray<string> Read(string text) => [.. Marked(text).Where(word => word is not (Beside or Code))];

    /// <summary>
    /// Whether words say that a display shows something: without these words nothing but a part is named in "fan code".
    /// </summary>
    public bool NamesACode(string text) => Marked(text).Contains(Code);

    private ImmutableArray<string> Marked(string text)
    {
        ImmutableArray<string> said = PlainWords.Of(text);
        var read = ImmutableArray.CreateBuilder<string>(said.Length);
        for (int at = 0; at < said.Length;)
        {
            (string mark, ImmutableArray<string> run) = _runs.FirstOrDefault(entry => StartsWith(said, at, entry.Run));
            if (run.IsDefault) read.Add(Stem(said[at++]));
            else
            {
                read.Add(mark);
                at += run.Length;
            }
        }

        return read.ToImmutable();
    }

    private static bool StartsWith(ImmutableArray<string> said, int at, ImmutableArray<string> run)
    {
        if (at + run.Length > said.Length) return false;
        for (int place = 0; place < run.Length; place++)
            if (said[at + place] != run[place]) return false;
        return true;
    }

    /// <summary>More than one of what a unit of pressure measures: those that gauges show.</summary>
    public string Pressures => _pressure[^1];

    // One and many are the same word here, but for pressures: "high pressure" is a trouble, "high pressures" are read.
    private string Stem(string word) =>
        word != Pressures && word.Length > 3 && word[^1] == 's' && word[^2] != 's' ? word[..^1] : word;
}
