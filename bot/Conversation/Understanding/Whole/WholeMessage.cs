using System.Collections.Immutable;
using DxAssistant.Conversation.Told;

namespace DxAssistant.Conversation.Understanding.Whole;

/// <summary>What a message tells when it is taken as a whole.</summary>
/// <param name="Items">In the order said.</param>
/// <param name="Unclear">Pieces that seem to tell something and are not used.</param>
/// <param name="Rest">The pieces that are left for the complaint in plain words.</param>
internal sealed record WholeMessage(ImmutableArray<ToldItem> Items, ImmutableArray<string> Unclear,
    ImmutableArray<string> Rest)
{
    /// <summary>Whether it tells of nothing but readings, none of which is clear enough to be used.</summary>
    public bool TellsOnlyReadings { get; init; }

    /// <summary>Whether it tells more than the unit and one code or complaint, so that it is confirmed first.</summary>
    public bool NeedsConfirming => Complaints > 1
        || Items.Any(
            item => item.Thing is not (ToldThing.Unit or ToldThing.Code or ToldThing.Symptom or ToldThing.Mode));

    /// <summary>Whether it is one finding and nothing else.</summary>
    public bool IsLoneFinding => Items is [{ Thing: ToldThing.Outcome }] && Rest.IsEmpty && Unclear.IsEmpty;

    /// <summary>The role that it names and nothing else; null when it names none or says more.</summary>
    public string? LoneRole =>
        Items is [{ Thing: ToldThing.AtUnit person }] && Rest.IsEmpty && Unclear.IsEmpty ? person.Role : null;

    /// <summary>The items and one more, unless one of them is about the same.</summary>
    public ImmutableArray<ToldItem> With(ToldItem item) => Items.Any(item.IsAbout) ? Items : Items.Add(item);

    /// <summary>Whether it says what is wrong.</summary>
    public bool TellsATrouble => Complaints > 0;

    private int Complaints => Items.Count(item => item.Thing is ToldThing.Code or ToldThing.Symptom);

    /// <summary>Whether it tells of anything but this check.</summary>
    public bool GoesBeyond(string check) =>
        Items.Any(item => item.Thing switch
        {
            ToldThing.Outcome outcome => outcome.Check != check,
            ToldThing.Measured measured => measured.Check != check,
            ToldThing.Tried or ToldThing.AtUnit => true,
            _ => false,
        });
}
