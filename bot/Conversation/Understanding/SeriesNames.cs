using System.Collections.Immutable;
using System.Text.RegularExpressions;
using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.Replies;
using DxAssistant.Conversation.Speaking;
using DxAssistant.Knowledge.Content;
using DxAssistant.Knowledge.Content.Model;

namespace DxAssistant.Conversation.Understanding;

/// <summary>Finds the series that a message names.</summary>
internal static class SeriesNames
{
    /// <summary>
    /// The one series whose name, or a word people use for it, stands in the text; null when none or several do.
    /// </summary>
    public static SeriesPage? Find(Library library, string text)
    {
        ImmutableArray<SeriesPage> named = Named(library, text);
        return named.Length == 1 ? named[0] : null;
    }

    /// <summary>
    /// The text with a blank for every sign of a series name in it, so that no part of a name is read as a code.
    /// </summary>
    /// <remarks>As long as the text: what is found in it stands at the same place in both.</remarks>
    public static string Blanked(Library library, string text)
    {
        string rest = text;
        foreach (SeriesPage page in Named(library, text))
            foreach (string name in Names(page).Concat(PlainWords.Of(page.Title.Text))
                .OrderByDescending(name => name.Length))
                rest = Regex.Replace(rest, Pattern(name), found => new string(' ', found.Length),
                    RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);
        return rest;
    }

    /// <summary>The text without series names, if anything else is in it: a name tells of no trouble.</summary>
    public static string Without(Library library, string text) =>
        Blanked(library, text) is var rest && PlainWords.IsEmpty(rest) ? text : rest;

    /// <summary>Whether a message says no more than a series.</summary>
    public static bool IsAll(Library library, string text) =>
        OptionMatcher.Telling(Blanked(library, text), library.Language).IsEmpty;

    /// <summary>Enters the series into the case.</summary>
    public static void Choose(TurnDraft turn, SeriesPage series)
    {
        turn.Happen(new SeriesChosen(series.Id));
        turn.Say(SegmentKind.Understood, "understood-series", Slot.Of("series", series.Title));
    }

    private static ImmutableArray<SeriesPage> Named(Library library, string text)
    {
        string said = $" {PlainWords.Joined(text)} ";
        return [.. library.Series.Values.Where(page => Names(page).Any(name =>
            said.Contains($" {PlainWords.Joined(name)} ", StringComparison.Ordinal)))];
    }

    // Whole words, whatever stands between them.
    private static string Pattern(string name) =>
        $@"(?<![\p{{L}}\p{{N}}]){string.Join(@"[^\p{L}\p{N}]+", PlainWords.Of(name).Select(Regex.Escape))}(?![\p{{L}}\p{{N}}])";

    private static IEnumerable<string> Names(SeriesPage page) =>
        page.SaidAs.Select(passage => passage.Text).Append(page.Title.Text);
}
