using System.Collections.Immutable;
using DxAssistant.Knowledge.Content.Model;

namespace DxAssistant.Conversation.Understanding;

/// <summary>Phrases that are lists of words, parted by commas.</summary>
internal static class PhraseLists
{
    /// <summary>The entries of a list, as plain words.</summary>
    public static IEnumerable<string> Of(PhraseBook phrases, string id) =>
        phrases.Template(id).Split(',').Select(PlainWords.Joined).Where(entry => entry.Length > 0);

    /// <summary>The entries of a list, each as its words one after the other, the longest first.</summary>
    public static ImmutableArray<string[]> Runs(PhraseBook phrases, string id) =>
        [.. Of(phrases, id).Select(entry => entry.Split(' ')).OrderByDescending(run => run.Length)];

    /// <summary>The words of all entries.</summary>
    public static IEnumerable<string> WordsOf(PhraseBook phrases, string id) =>
        Of(phrases, id).SelectMany(entry => entry.Split(' '));

    /// <summary>The entries of some lists as beginnings of a message, the longest first.</summary>
    public static ImmutableArray<string> Beginnings(PhraseBook phrases, params string[] ids) =>
        [.. ids.SelectMany(id => Of(phrases, id)).Distinct().OrderByDescending(entry => entry.Length)
            .ThenBy(entry => entry, StringComparer.Ordinal)];

    /// <summary>
    /// What follows one of some beginnings in plain words, empty when nothing does; null when they begin otherwise.
    /// </summary>
    public static string? After(ImmutableArray<string> beginnings, string said) =>
        beginnings.FirstOrDefault(words => said == words
            || said.StartsWith(words + " ", StringComparison.Ordinal)) is { } beginning
            ? said[beginning.Length..].Trim()
            : null;
}
