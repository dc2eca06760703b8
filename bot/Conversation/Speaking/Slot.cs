using DxAssistant.Conversation.Replies;

namespace DxAssistant.Conversation.Speaking;

/// <summary>What goes into one pair of braces of a phrase.</summary>
/// <param name="From">Where the text comes from; null when it is a plain number of the reply itself.</param>
internal sealed record Slot(string Name, string Text, Provenance? From)
{
    /// <summary>Something the person said or read.</summary>
    public static Slot Said(string name, string text) => new(name, text, new Provenance.Person());

    /// <summary>A count, or a figure of the belief or the plan.</summary>
    public static Slot Figure(string name, double value, string format = "0") =>
        new(name, value.ToString(format, System.Globalization.CultureInfo.InvariantCulture), null);
}
