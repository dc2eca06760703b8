using System.Collections.Immutable;
using System.Text;
using DxAssistant.Conversation.Replies;
using DxAssistant.Knowledge.Content.Model;
using DxAssistant.Knowledge.Languages;

namespace DxAssistant.Conversation.Speaking;

/// <summary>Makes segments from pages and phrases, and from nothing else.</summary>
internal sealed class Speaker(PhraseBook phrases, LanguagePage? language = null, LanguagePage? main = null)
{
    /// <summary>How figures are told and heard in a language other than the main one.</summary>
    public MainTongue? Tongue { get; } = language is null or { IsMain: true } ? null : new MainTongue(language);

    /// <summary>A phrase with its slots filled.</summary>
    public Segment Say(SegmentKind kind, string phrase, params ReadOnlySpan<Slot> slots)
    {
        var from = ImmutableArray.CreateBuilder<Provenance>(slots.Length + 1);
        from.Add(new Provenance.Phrase(phrase));
        foreach (Slot slot in slots)
            foreach (Provenance origin in slot.From)
                if (!from.Contains(origin)) from.Add(origin);
        return new Segment(kind, Text(phrase, slots), from.ToImmutable());
    }

    /// <summary>A sentence of a page, as it stands there.</summary>
    public Segment Quote(SegmentKind kind, Passage passage) =>
        new(kind, passage.Text, [Slot.PageOf(passage.Place)])
        {
            Language = Tongue is not null && passage.Place.Language != language!.Id
                ? passage.Place.Language ?? main?.Id
                : null,
        };

    /// <summary>The text of a phrase alone, for labels of things to tap.</summary>
    /// <remarks>One pass over the template: braces in what is filled in stay as they are.</remarks>
    public string Text(string phrase, params ReadOnlySpan<Slot> slots)
    {
        string template = phrases.Template(phrase);
        var text = new StringBuilder(template.Length);
        for (int at = 0; at < template.Length;)
        {
            int close = template[at] == '{' ? template.IndexOf('}', at) : -1;
            if (close < 0) text.Append(template[at++]);
            else
            {
                text.Append(Filled(template[(at + 1)..close], slots, phrase));
                at = close + 1;
            }
        }

        return text.ToString();
    }

    private string Filled(string name, ReadOnlySpan<Slot> slots, string phrase)
    {
        foreach (Slot slot in slots)
            if (slot.Name == name) return Tongue?.Told(slot.Text) ?? slot.Text;
        throw new ArgumentException($"phrase {phrase} has a slot {name} that was not filled", nameof(slots));
    }
}
