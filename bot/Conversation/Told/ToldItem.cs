namespace DxAssistant.Conversation.Told;

/// <summary>One thing of a whole message, until it is confirmed.</summary>
/// <param name="Words">The words it came in.</param>
/// <param name="Taken">Whether it will be used; false when it was taken back, or may mean something else.</param>
public sealed record ToldItem(ToldThing Thing, string Words, bool Taken)
{
    /// <summary>Whether another item says something else about the same.</summary>
    public bool IsAbout(ToldItem other) => (Thing, other.Thing) switch
    {
        (ToldThing.Unit, ToldThing.Unit) or (ToldThing.AtUnit, ToldThing.AtUnit) or (ToldThing.Mode, ToldThing.Mode) =>
            true,
        (ToldThing.Outcome here, ToldThing.Outcome there) => here.Check == there.Check,
        (ToldThing.Measured here, ToldThing.Measured there) => here.Check == there.Check,
        (ToldThing.Symptom here, ToldThing.Symptom there) => here.Id == there.Id,
        _ => Thing == other.Thing,
    };
}
