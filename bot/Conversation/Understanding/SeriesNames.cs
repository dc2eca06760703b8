using System.Collections.Immutable;
using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.Replies;
using DxAssistant.Conversation.Speaking;
using DxAssistant.Knowledge.Content;
using DxAssistant.Knowledge.Content.Model;

namespace DxAssistant.Conversation.Understanding;

/// <summary>Finds the series that a message names.</summary>
internal static class SeriesNames
{
    /// <summary>The one series whose name, or a word people use for it, stands in the text; null when none or several do.</summary>
    public static SeriesPage? Find(Library library, string text)
    {
        string said = $" {PlainWords.Joined(text)} ";
        ImmutableArray<SeriesPage> named = [.. library.Series.Values.Where(page => Names(page).Any(name =>
            said.Contains($" {PlainWords.Joined(name)} ", StringComparison.Ordinal)))];
        return named.Length == 1 ? named[0] : null;
    }

    /// <summary>Enters the series into the case.</summary>
    public static void Choose(TurnDraft turn, SeriesPage series)
    {
        turn.Happen(new SeriesChosen(series.Id));
        turn.Say(SegmentKind.Understood, "understood-series", Slot.Of("series", series.Title));
    }

    private static IEnumerable<string> Names(SeriesPage page) =>
        page.SaidAs.Select(passage => passage.Text).Append(page.Title.Text);
}
