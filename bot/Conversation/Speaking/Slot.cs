using System.Collections.Immutable;
using System.Globalization;
using DxAssistant.Conversation.Replies;
using DxAssistant.Knowledge.Content.Model;

namespace DxAssistant.Conversation.Speaking;

/// <summary>What goes into one pair of braces of a phrase.</summary>
/// <param name="From">Where the text comes from; empty when it is a plain number of the reply itself.</param>
internal sealed record Slot(string Name, string Text, ImmutableArray<Provenance> From)
{
    /// <summary>Something the person said or read.</summary>
    public static Slot Said(string name, string text) => new(name, text, [new Provenance.Person()]);

    /// <summary>A count, or a figure of the belief or the plan.</summary>
    public static Slot Figure(string name, double value) =>
        new(name, value.ToString("0", CultureInfo.InvariantCulture), []);

    /// <summary>A word that stands on a page outside any sentence: a label, a unit, a part.</summary>
    public static Slot Of(string name, string text, PagePlace place) => new(name, text, [PageOf(place)]);

    /// <summary>A sentence of a page.</summary>
    public static Slot Of(string name, Passage passage) => Of(name, passage.Text, passage.Place);

    /// <summary>Sentences of several pages, with commas between them.</summary>
    public static Slot List(string name, IReadOnlyCollection<Passage> passages) => new(
        name, string.Join(", ", passages.Select(passage => passage.Text)),
        [.. passages.Select(passage => PageOf(passage.Place)).Distinct()]);

    public static Provenance PageOf(PagePlace place) => new Provenance.Page(place.Path, place.Heading);
}
