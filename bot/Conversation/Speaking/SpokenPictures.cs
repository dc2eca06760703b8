using System.Collections.Immutable;
using DxAssistant.Conversation.Replies;
using DxAssistant.Knowledge.Judging;
using DxAssistant.Knowledge.Pictures;

namespace DxAssistant.Conversation.Speaking;

/// <summary>Pictures whose words come from the phrase file.</summary>
internal sealed class SpokenPictures(Speaker speaker) : IPictureWords
{
    /// <summary>The picture of a verdict; null when there is nothing to show.</summary>
    public ImmutableArray<Picture>? Of(VerdictFacts facts) => VerdictPictures.Of(facts, this) is { } drawn
        ? [Shown(drawn, new Provenance.Calculation(facts.Judge, facts.Judgement.Source.ToString()))]
        : null;

    /// <summary>A picture made from figures, with where the figures come from.</summary>
    public static Picture Shown(Drawn drawn, params ReadOnlySpan<Provenance> figures) => new(
        PictureId.Of(drawn.Kind, drawn.Svg), drawn.Kind, drawn.Svg, drawn.Text,
        [new Provenance.Phrase(drawn.Phrase), .. figures]);

    public string Say(string phrase, params ReadOnlySpan<(string Slot, string Text)> slots)
    {
        var filled = new Slot[slots.Length];
        for (int i = 0; i < slots.Length; i++) filled[i] = new Slot(slots[i].Slot, slots[i].Text, []);
        return speaker.Text(phrase, filled);
    }
}
