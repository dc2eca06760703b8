using System.Collections.Immutable;
using DxAssistant.Conversation.Replies;
using DxAssistant.Knowledge.Content;
using DxAssistant.Knowledge.Content.Model;

namespace DxAssistant.Conversation.Speaking;

/// <summary>Makes segments from pages and phrases, and from nothing else.</summary>
internal sealed class Speaker(PhraseBook phrases)
{
    /// <summary>A phrase with its slots filled.</summary>
    public Segment Say(SegmentKind kind, string phrase, params ReadOnlySpan<Slot> slots)
    {
        var from = ImmutableArray.CreateBuilder<Provenance>(slots.Length + 1);
        from.Add(new Provenance.Phrase(phrase));
        foreach (Slot slot in slots)
            if (slot.From is { } origin && !from.Contains(origin)) from.Add(origin);
        return new Segment(kind, Fill(phrase, slots), from.ToImmutable());
    }

    /// <summary>A sentence of a page, as it stands there.</summary>
    public static Segment Quote(SegmentKind kind, Passage passage) => new(kind, passage.Text, [PageOf(passage)]);

    /// <summary>A sentence of a page, to be put into a phrase.</summary>
    public static Slot Slot(string name, Passage passage) => new(name, passage.Text, PageOf(passage));

    /// <summary>The text of a phrase alone, for labels of things to tap.</summary>
    public string Text(string phrase, params ReadOnlySpan<Slot> slots) => Fill(phrase, slots);

    private static Provenance.Page PageOf(Passage passage) => new(passage.Place.Path, passage.Place.Heading);

    private string Fill(string phrase, ReadOnlySpan<Slot> slots)
    {
        string text = phrases.Template(phrase);
        foreach (Slot slot in slots) text = text.Replace("{" + slot.Name + "}", slot.Text, StringComparison.Ordinal);
        return text;
    }
}
